using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads one declaration file of any kind.</summary>
public sealed class DeclarationReader(HazardVocabulary vocabulary)
{
    private readonly IngredientReader ingredients = new(vocabulary);

    /// <summary>The kinds of declaration.</summary>
    public static IReadOnlyList<string> Kinds { get; } = ["oil", "wax", "extra", "maker", "vessel", "candle", "batch"];

    /// <summary>Reads the text of a file.</summary>
    /// <param name="text">The YAML.</param>
    /// <param name="file">File name for messages.</param>
    /// <param name="id">File name without folder and ending, by which others refer to it.</param>
    /// <param name="problems">Collects everything that is wrong.</param>
    /// <returns>The declaration, or null when there are problems.</returns>
    public IDeclaration? Read(string text, string file, string id, Problems problems)
    {
        var own = new Problems();
        IDeclaration? declaration = YamlText.Read(text, file, own) is { } map ? ReadKind(new Fields(map, own), id) : null;
        problems.AddRange(own.Found);
        return own.None ? declaration : null;
    }

    private IDeclaration? ReadKind(Fields fields, string id)
    {
        string? kind = fields.OptionalText("declares");
        IDeclaration? declaration = kind switch
        {
            "oil" => ReadOil(fields, id),
            "wax" => ReadWax(fields, id),
            "extra" => ReadExtra(fields, id),
            "maker" => ReadMaker(fields, id),
            "vessel" => ReadVessel(fields, id),
            "candle" => CandleReader.ReadCandle(fields, id),
            "batch" => CandleReader.ReadBatch(fields, id),
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

        fields.Done();
        return declaration;
    }

    private Oil ReadOil(Fields fields, string id) =>
        new(
            id,
            fields.Place,
            fields.Text("name", "Sea Fog"),
            fields.Text("supplier", "the name on the sheet"),
            fields.Text("document", "SDS 1187 version 4"),
            fields.Day("revised"),
            ingredients.ReadTable(fields, "ingredients", required: true),
            ingredients.ReadClaims(fields, "classes"),
            ReadFlashPoint(fields),
            ReadDensity(fields, "densityGramsPerMl"),
            fields.OptionalNumber("dropMilligrams", 0, 1000) is { } milligrams ? new Grams(milligrams / 1000) : null,
            ReadLoad(fields, "highestLoad"),
            ReadIfra(fields),
            fields.Texts("notDeclared"),
            ReadDraft(fields)
        );

    private static DraftOrigin? ReadDraft(Fields fields)
    {
        if (fields.OptionalGroup("draft") is not { } draft)
        {
            return null;
        }

        var files = new List<string>();
        foreach (Fields source in draft.Groups("from"))
        {
            files.Add(source.Text("file", "sheet.pdf"));
            source.Text("sha256", "the file's hash");
            source.Done();
        }

        TextPlace place = draft.PlaceOf("reviewed");
        Review? review = draft.Take("reviewed") switch
        {
            YamlScalar { Text: "no" } or null => null,
            YamlMap map => ReadReview(new Fields(map, fields.Problems)),
            { } other => Refuse(other),
        };
        draft.Done();
        return new DraftOrigin(files, review, place);

        Review? Refuse(YamlValue value)
        {
            fields.Problems.Add(
                value.Place,
                "'reviewed' must name who compared the draft with the document, and when.",
                "Write 'reviewed: { by: your name, on: 2026-11-25 }', or 'reviewed: no'."
            );
            return null;
        }
    }

    private static Review ReadReview(Fields fields)
    {
        var review = new Review(fields.Text("by", "your name"), fields.Day("on"));
        fields.Done();
        return review;
    }

    private Wax ReadWax(Fields fields, string id)
    {
        string name = fields.Text("name", "Soft container blend");
        string supplier = fields.Text("supplier", "the name on the sheet");
        List<WaxPart> blend = [];
        foreach (Fields part in fields.Groups("blend"))
        {
            blend.Add(new WaxPart(ReadReference(part, "wax"), new MassPercent(part.Number("percent", 0, 100, "60"))));
            part.Done();
        }

        double total = blend.Sum(p => p.Share.Value);
        if (blend.Count > 0 && Math.Abs(total - 100) > 1e-6)
        {
            fields.Problems.Add(fields.PlaceOf("blend"), $"The parts of the blend add up to {Figures.Plain(total)} %, not 100 %.");
        }

        if (blend.Count > 0 && fields.Has("ingredients"))
        {
            fields.Problems.Add(
                fields.PlaceOf("ingredients"),
                "A wax is either a blend of other waxes or has ingredients of its own.",
                "Keep one of the two."
            );
        }

        return new Wax(
            id,
            fields.Place,
            name,
            supplier,
            ingredients.ReadTable(fields, "ingredients", required: blend.Count == 0),
            blend,
            ReadLoad(fields, "highestLoad"),
            ReadDensity(fields, "solidDensityGramsPerMl"),
            ReadDensity(fields, "liquidDensityGramsPerMl"),
            fields.OptionalNumber("meltingCelsius", 0, 200) is { } melting ? new Celsius(melting) : null
        );
    }

    private Extra ReadExtra(Fields fields, string id) =>
        new(
            id,
            fields.Place,
            fields.Text("name", "Slate dye chip"),
            fields.Text("supplier", "the name on the sheet"),
            fields.Text("purpose", "dye"),
            ingredients.ReadTable(fields, "ingredients", required: true),
            fields.OptionalNumber("highestPercentOfWax", 0, 100) is { } highest ? new MassPercent(highest) : null
        );

    private static Maker ReadMaker(Fields fields, string id)
    {
        string name = fields.Text("name", "the name on the label");
        IReadOnlyList<string> address = fields.Texts("address");
        if (address.Count == 0)
        {
            fields.Problems.Add(
                fields.PlaceOf("address"),
                "'address' is missing.",
                "List the lines of the postal address: the law asks for it on every label."
            );
        }

        string telephone = fields.Text("telephone", "'+353 1 555 0100'");
        string? email = fields.OptionalText("email");
        string? web = fields.OptionalText("web");
        string? emergency = fields.OptionalText("emergencyTelephone");
        if (email is null && web is null)
        {
            fields.Problems.Add(
                fields.Place,
                "An electronic address is missing.",
                "Add 'email' or 'web': the law on product safety asks for one on the product."
            );
        }

        Fields? vat = fields.OptionalGroup("vat");
        string? country = vat?.Text("country", "IE");
        string? number = vat?.Text("number", "the number without the country's letters");
        vat?.Done();
        return new Maker(id, fields.Place, name, address, telephone, email, web, emergency, country, number);
    }

    private static Vessel ReadVessel(Fields fields, string id)
    {
        string name = fields.Text("name", "Straight jar");
        string material = fields.Text("material", "glass");
        var brimful = new Millilitres(fields.Number("brimfulMl", 0, 100_000, "300"));
        Millilitres? fill = fields.OptionalNumber("fillMl", 0, 100_000) is { } f ? new Millilitres(f) : null;
        if (fill is { } line && line.Value > brimful.Value)
        {
            fields.Problems.Add(fields.PlaceOf("fillMl"), $"The fill of {line} is more than the {brimful} to the brim.");
        }

        return new Vessel(id, fields.Place, name, material, brimful, fill, ReadSize(fields, "inner"), ReadSize(fields, "outer"));
    }

    private static VesselSize? ReadSize(Fields fields, string key)
    {
        Fields? size = fields.OptionalGroup(key);
        if (size is null)
        {
            return null;
        }

        Millimetres? diameter = Length(size, "diameterMm");
        Millimetres? length = Length(size, "lengthMm");
        Millimetres? width = Length(size, "widthMm");
        var height = new Millimetres(size.Number("heightMm", 0, 5000, "90"));
        if ((diameter is null) == (length is null) || (length is null) != (width is null))
        {
            size.Problems.Add(size.Place, $"'{key}' must have either 'diameterMm' or both 'lengthMm' and 'widthMm'.");
            diameter = new Millimetres(1);
        }

        size.Done();
        return new VesselSize(diameter, length, width, height);
    }

    private static Millimetres? Length(Fields fields, string key) =>
        fields.OptionalNumber(key, 0, 5000) is { } value ? new Millimetres(value) : null;

    private static GramsPerMillilitre? ReadDensity(Fields fields, string key) =>
        fields.OptionalNumber(key, 0, 25) is { } value ? new GramsPerMillilitre(value) : null;

    private static FlashPoint? ReadFlashPoint(Fields fields)
    {
        Fields? group = fields.OptionalGroup("flashPoint");
        if (group is null)
        {
            return null;
        }

        double? exact = group.OptionalNumber("celsius", -100, 500);
        double? above = group.OptionalNumber("aboveCelsius", -100, 500);
        string? method = group.OptionalText("method");
        if ((exact is null) == (above is null))
        {
            group.Problems.Add(
                group.Place,
                "'flashPoint' must have either 'celsius' or 'aboveCelsius'.",
                "A sheet that prints '> 93' means aboveCelsius: 93."
            );
        }

        group.Done();
        return new FlashPoint(new Celsius(exact ?? above ?? 0), above is not null, method);
    }

    private static IfraCertificate? ReadIfra(Fields fields)
    {
        Fields? group = fields.OptionalGroup("ifra");
        if (group is null)
        {
            return null;
        }

        var amendment = (int)group.Number("amendment", 0, 200, "51");
        DateOnly date = group.Day("date");
        var limits = new Dictionary<string, IfraLimit>();
        foreach (YamlEntry entry in group.Entries("limits"))
        {
            limits[entry.Key.ToUpperInvariant()] = (entry.Value as YamlScalar)?.Text switch
            {
                "not restricted" => new IfraLimit(MassPercent.Whole),
                "not permitted" => new IfraLimit(MassPercent.Zero),
                _ => new IfraLimit(new MassPercent(group.ReadNumber(entry.Value, $"the limit of category {entry.Key}", -1e-12, 100))),
            };
        }

        group.Done();
        return new IfraCertificate(amendment, date, limits);
    }

    internal static FragranceLoad? ReadLoad(Fields fields, string key)
    {
        switch (fields.Take(key))
        {
            case null:
                return null;
            case YamlMap map:
                var group = new Fields(map, fields.Problems);
                double percent = group.Number("percent", -1e-12, 100, "10");
                string basis = group.Choice("of", "wax", "candle");
                group.Done();
                if (basis == "candle" && percent >= 100)
                {
                    fields.Problems.Add(group.Place, "A candle of nothing but oil is no candle.");
                    percent = 1;
                }

                return new FragranceLoad(new MassPercent(percent), basis == "wax" ? LoadBasis.Wax : LoadBasis.Candle);
            case { } other:
                ExplainLoad(fields, key, other);
                return null;
        }
    }

    private static void ExplainLoad(Fields fields, string key, YamlValue value)
    {
        string text = ((value as YamlScalar)?.Text ?? "").Replace("%", "", StringComparison.Ordinal).Trim();
        if (
            !double.TryParse(
                text,
                System.Globalization.NumberStyles.Float,
                System.Globalization.CultureInfo.InvariantCulture,
                out double figure
            ) || figure is < 0 or >= 100
        )
        {
            fields.Problems.Add(
                value.Place,
                $"'{key}' must say a percentage and what it is of.",
                $"Write '{key}: {{ percent: 10, of: wax }}'."
            );
            return;
        }

        var share = new MassPercent(figure);
        fields.Problems.Add(
            value.Place,
            $"'{key}: {text}' can mean two things: {share} of the wax is {FragranceLoad.WaxToCandle(share)} of the candle, "
                + $"and {share} of the candle is {FragranceLoad.CandleToWax(share)} of the wax.",
            $"Write '{key}: {{ percent: {text}, of: wax }}' or '{key}: {{ percent: {text}, of: candle }}'."
        );
    }

    internal static Reference ReadReference(Fields fields, string key)
    {
        string id = fields.Text(key, "the other file's name without .yaml");
        return new Reference(id, fields.PlaceOf(key));
    }
}
