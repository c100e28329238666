using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads one declaration file of any kind.</summary>
public sealed class DeclarationReader
{
    private readonly IngredientReader ingredients;
    private readonly OilReader oils;
    private readonly WaxReader waxes;
    private readonly ExtraReader extras;

    /// <summary>Sets up a reader.</summary>
    /// <param name="vocabulary">The hazard classes that declarations may name.</param>
    public DeclarationReader(HazardVocabulary vocabulary)
    {
        ingredients = new IngredientReader(vocabulary);
        oils = new OilReader(ingredients);
        waxes = new WaxReader(ingredients);
        extras = new ExtraReader(ingredients);
    }

    /// <summary>The kinds of declaration.</summary>
    public static IReadOnlyList<string> Kinds { get; } =
    [
        "oil",
        "wax",
        "base",
        "extra",
        "maker",
        "vessel",
        "candle",
        "batch",
        "lot",
        "dispatch",
        "incident",
        "test",
        "weighing",
        "brand",
        "set",
        "trial",
    ];

    /// <summary>Reads the text of a file.</summary>
    /// <param name="text">The YAML.</param>
    /// <param name="file">File name for messages.</param>
    /// <param name="id">File name without folder and ending, by which others refer to it.</param>
    /// <param name="problems">Collects everything that is wrong.</param>
    /// <returns>The declaration, or null when there are problems.</returns>
    public IDeclaration? Read(string text, string file, string id, Problems problems)
    {
        var own = new Problems();
        IDeclaration? declaration = YamlText.Read(text, file, own) is { } map ? ReadKind(new Fields(map, own), map, id) : null;
        problems.AddRange(own.Found);
        return own.None ? declaration : null;
    }

    private IDeclaration? ReadKind(Fields fields, YamlMap map, string id)
    {
        string? kind = fields.OptionalText("declares");
        IDeclaration? declaration = kind switch
        {
            "oil" => oils.Read(fields, id),
            "wax" => waxes.Read(fields, id),
            "base" => waxes.ReadBase(fields, id),
            "extra" => extras.Read(fields, id),
            "maker" => MakerReader.Read(fields, id),
            "vessel" => VesselReader.Read(fields, id),
            "candle" => CandleReader.ReadCandle(fields, id, ingredients),
            "batch" => CandleReader.ReadBatch(fields, id),
            "set" => SetReader.Read(fields, id),
            "brand" => BrandReader.ReadBrand(fields, id),
            "lot" => KeepingReader.ReadLot(fields, id),
            "dispatch" => KeepingReader.ReadDispatch(fields, id),
            "incident" => KeepingReader.ReadIncident(fields, id),
            "test" => KeepingReader.ReadTest(fields, id),
            "weighing" => KeepingReader.ReadWeighing(fields, id),
            "trial" => TrialReader.ReadTrial(fields, id),
            _ => null,
        };
        if (declaration is null)
        {
            string near = kind is not null && Suggestion.Nearest(kind, Kinds) is { } guess ? $" Did you mean '{guess}'?" : "";
            fields.Problems.Add(
                fields.PlaceOf("declares"),
                kind is null ? "The file does not say what it declares." : $"'declares: {kind}' is not known.{near}",
                $"Write 'declares:' and one of: {string.Join(", ", Kinds)}."
            );
            return null;
        }

        declaration = declaration switch
        {
            Candle candle => candle with { Writing = WritingReader.Read(fields, map) },
            Batch batch => batch with { Writing = WritingReader.Read(fields, map) },
            Vessel vessel => vessel with { Writing = WritingReader.Read(fields, map) },
            Wax wax => wax with { Writing = WritingReader.Read(fields, map) },
            Oil oil => oil with { Writing = WritingReader.Read(fields, map) },
            Maker maker => maker with { Writing = WritingReader.Read(fields, map) },
            _ => declaration,
        };
        fields.Done();
        return declaration;
    }
}
