using System.CommandLine;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Cli.Commands;

/// <summary>Options that say which candle a trial would become.</summary>
internal sealed class TrialOptions
{
    private const double LeastLoad = 0.001;
    private const double MostLoad = 50;
    private const double HottestCelsius = 250;

    private readonly Option<string?> wax = new("--wax")
    {
        Description = "The wax (file name without .yaml). Default: the one that each trial names.",
    };

    private readonly Option<double?> load = new("--load")
    {
        Description = "Oil in percent of what --of says. Default: the load that each trial names.",
        CustomParser = result => Numbers.Decimal("--load", LeastLoad, MostLoad)(result),
    };

    private readonly Option<string> of = new("--of")
    {
        Description = "What --load is a percentage of: wax or candle. Default: wax.",
        DefaultValueFactory = _ => "wax",
    };

    private readonly Option<double?> adding = new("--adding")
    {
        Description = "The temperature at which you would add the oil, °C, to be held against the flash points.",
        CustomParser = result => Numbers.Decimal("--adding", 0, HottestCelsius)(result),
    };

    private readonly Option<string?> place = new("--place")
    {
        Description = "The place of sale (country code). Default: everywhere that the folder's candles are sold.",
    };

    public TrialOptions() => of.AcceptOnlyFromAmong("wax", "candle");

    public IEnumerable<Option> All => [wax, load, of, adding, place];

    /// <summary>What the options say; null when they cannot be understood, which is told.</summary>
    public TrialSetting? Read(KeptFolder folder, ParseResult parse)
    {
        List<string> codes = parse.GetValue(place) is { } one
            ? [one]
            : [.. folder.Catalogue.OfKind<Candle>().SelectMany(c => c.SoldIn).Select(s => s.Code.Text).Distinct()];
        List<Place> places = [.. codes.Select(folder.Lawbook.FindPlace).OfType<Place>()];
        if (places.Count == 0)
        {
            folder.Session.Complain(
                codes.Count == 0
                    ? "No candle of the folder is sold anywhere: name a place with --place."
                    : $"There is no edition of the law for the place '{codes[0]}'. {folder.Lawbook.InsteadOfPlace(codes[0])}"
            );
            return null;
        }

        return new TrialSetting(
            parse.GetValue(wax),
            parse.GetValue(load) is { } percent
                ? new FragranceLoad(new MassPercent(percent), parse.GetValue(of) == "wax" ? LoadBasis.Wax : LoadBasis.Candle)
                : null,
            parse.GetValue(adding) is { } celsius ? new Celsius(celsius) : null,
            places
        );
    }
}
