using System.Globalization;
using Chandlery.Core.Assessed;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Paper.Designs;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>What a front may say and draw of an assessed candle.</summary>
internal static class DesignFactsMaker
{
    private const double LeastHiddenShare = 0.12;
    private const double LeastHiddenLoad = 6;
    private const double HiddenLoadRange = 5;

    /// <summary>The facts. Unless the brand says so, no figure of the recipe is among them.</summary>
    public static DesignFacts Make(Assessment a, BrandKit kit)
    {
        Brand? brand = kit.Brand;
        Language language = a.Languages[0];
        DesignRequest? request = a.Candle.Design;
        bool shows = brand?.ShowsShares ?? false;
        double grams = a.Candle.NetMass.Value;
        List<BlendPart> parts = Parts(a, new Palette(brand), shows);
        VesselSize? size = a.Vessel.Inner ?? a.Vessel.Outer;
        return new DesignFacts
        {
            Name = a.Candle.Name,
            MakerName = brand?.Name ?? a.Maker.Name,
            Monogram = brand?.Monogram ?? Initials(a.Candle.Name),
            StrapLine = request?.StrapLine ?? brand?.StrapLine ?? "",
            Kind = language.Words[CandleWords.KindOf(a)],
            Scents = request?.ScentNotes ?? string.Join(", ", parts.Select(p => p.Name)),
            Quantity = a.Candle.NetVolume is { } volume
                ? $"{language.Figures.Declared(volume.Value)} ml"
                : $"{language.Figures.Declared(grams)} g",
            NetGrams = shows ? grams : a.Candle.NetVolume?.Value ?? grams,
            WaxGrams = shows ? grams * (1 - (a.Composition.Recipe.Load.Value / 100)) : 0,
            Wicks = a.Candle.Wicks.Count,
            Words = new DesignWords(
                language.Words[a.Candle.Wicks.Count == 1 ? "wick" : "wicks"],
                language.Words["hours"],
                shows || a.Candle.NetVolume is null ? language.Words["grams"] : "ml",
                language.Words[a.Kind.State == PhysicalState.Liquid ? "liquidBase" : "wax"]
            ),
            Figures = language.Figures,
            BurnHours = request?.BurnHours ?? 0,
            Batch = a.BatchCode ?? "",
            Parts = parts,
            LoadPercent = shows
                ? a.Composition.Recipe.Load.Value
                : LeastHiddenLoad + (HiddenLoadRange * new Seed(a.Candle.Name + "/load").Next()),
            ShowsShares = shows,
            VesselRatio = size?.Section is RectangularSection sides
                ? sides.LongSide.Value / Math.Min(sides.Length.Value, sides.Width.Value)
                : 1,
            VesselIsRound = size?.Section is not RectangularSection,
        };
    }

    // Where the recipe stays the maker's, a share is a figure from the names of candle and oil, and the order is the alphabet's.
    private static List<BlendPart> Parts(Assessment a, Palette inks, bool shows)
    {
        IReadOnlyList<OilShare> oils = a.Composition.Recipe.Oils;
        List<(Oil Oil, double Weight)> weighed = shows
            ? [.. oils.OrderByDescending(o => o.ShareOfBlend.Value).Select(o => (o.Oil, o.ShareOfBlend.Value))]
            :
            [
                .. oils.OrderBy(o => o.Oil.Name, StringComparer.Ordinal)
                    .Select(o => (o.Oil, LeastHiddenShare + new Seed($"{a.Candle.Name}/{o.Oil.Name}").Next())),
            ];
        double sum = weighed.Sum(w => w.Weight);
        return
        [
            .. weighed.Select(w =>
            {
                Scent note = w.Oil.Note ?? NoteOf(w.Oil.Name);
                return new BlendPart(w.Oil.Name.ToLower(CultureInfo.InvariantCulture), note, w.Weight / sum, inks.Note(note));
            }),
        ];
    }

    // An oil whose note nobody has said gets one by its name, so that its colour and plant stay the same.
    private static Scent NoteOf(string name)
    {
        Scent[] notes = Enum.GetValues<Scent>();
        return notes[(int)(new Seed(name + "/note").Next() * notes.Length)];
    }

    private static string Initials(string name) =>
        string.Concat(
            name.Split(' ', StringSplitOptions.RemoveEmptyEntries).Take(2).Select(w => char.ToUpper(w[0], CultureInfo.InvariantCulture))
        );
}
