using Chandlery.Core.Notified;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads candles and batches.</summary>
internal static class CandleReader
{
    public static Candle ReadCandle(Fields fields, string id)
    {
        string name = fields.Text("name", "Harbour Light");
        CandleUse use = fields.Choice("use", "indoor", "outdoor") == "outdoor" ? CandleUse.Outdoor : CandleUse.Indoor;
        Reference vessel = DeclarationReader.ReadReference(fields, "vessel");
        var netMass = new Grams(fields.Number("netGrams", 0, 100_000, "180"));
        Reference wax = DeclarationReader.ReadReference(fields, "wax");
        Grams? waxWeight = ReadGrams(fields, "waxGrams");
        FragranceLoad? load = DeclarationReader.ReadLoad(fields, "load");
        List<OilPart> oils = ReadOils(fields);
        CheckRecipe(fields, waxWeight, load, oils);
        return new Candle(
            id,
            fields.Place,
            name,
            use,
            vessel,
            netMass,
            wax,
            waxWeight,
            load,
            oils,
            ReadExtras(fields),
            ReadTopUp(fields),
            ReadWicks(fields),
            fields.OptionalNumber("headspaceMm", 0, 1000) is { } mm ? new Millimetres(mm) : null,
            ReadTemperatures(fields),
            ReadCountries(fields),
            fields.Texts("languages"),
            ReadLabel(fields),
            fields.OptionalText("batchCode"),
            fields.OptionalNumber("formulationNumber", -1, Ufi.LargestFormulationNumber) is { } number ? (long)number : null,
            fields.OptionalDay("onMarketSince"),
            ReadGtin(fields),
            ReadUrl(fields)
        );
    }

    public static Batch ReadBatch(Fields fields, string id)
    {
        Reference candle = DeclarationReader.ReadReference(fields, "candle");
        string code = fields.Text("code", "HL-2611-03");
        DateOnly poured = fields.Day("poured");
        Fields? weighed = fields.OptionalGroup("weighed");
        if (weighed is null)
        {
            if (!fields.Has("weighed"))
            {
                fields.Problems.Add(
                    fields.Place,
                    "'weighed' is missing.",
                    "A batch is what was really weighed: 'waxGrams' and 'oils' with grams."
                );
            }

            return new Batch(id, fields.Place, candle, code, poured, new Grams(1), [], [], null);
        }

        var waxWeight = new Grams(weighed.Number("waxGrams", 0, 10_000_000, "4000"));
        List<OilPart> oils = ReadOils(weighed);
        foreach (OilPart part in oils.Where(p => p.Measure == OilMeasure.Share))
        {
            fields.Problems.Add(part.Place, "A batch needs what was weighed, not a share.", "Write 'grams' for each oil.");
        }

        List<ExtraPart> extras = ReadExtras(weighed);
        if (extras.Any(e => e.Weight is null))
        {
            fields.Problems.Add(weighed.PlaceOf("extras"), "A batch needs the grams of each extra, not a percentage.");
        }

        TopUp? topUp = ReadTopUp(weighed);
        if (topUp is { Weight: null, Scented: false })
        {
            fields.Problems.Add(weighed.PlaceOf("topUp"), "A batch needs the grams of the second pour, not a percentage.");
        }

        weighed.Done();
        return new Batch(id, fields.Place, candle, code, poured, waxWeight, oils, extras, topUp);
    }

    private static Grams? ReadGrams(Fields fields, string key) =>
        fields.OptionalNumber(key, 0, 10_000_000) is { } grams ? new Grams(grams) : null;

    private static List<OilPart> ReadOils(Fields fields)
    {
        (string Key, OilMeasure Measure)[] measures =
        [
            ("share", OilMeasure.Share),
            ("grams", OilMeasure.Grams),
            ("millilitres", OilMeasure.Millilitres),
            ("drops", OilMeasure.Drops),
        ];
        var parts = new List<OilPart>();
        foreach (Fields part in fields.Groups("oils"))
        {
            Reference oil = DeclarationReader.ReadReference(part, "oil");
            var given = measures.Where(m => part.Has(m.Key)).ToList();
            if (given.Count != 1)
            {
                part.Problems.Add(
                    part.Place,
                    $"Oil '{oil.Id}' needs one amount.",
                    "Write one of 'share' (percent of the blend), 'grams', 'millilitres' or 'drops'."
                );
            }

            foreach ((string key, OilMeasure measure) in given.Take(1))
            {
                double amount = part.Number(key, 0, measure == OilMeasure.Share ? 100 : 10_000_000, "40");
                if (parts.Any(p => p.Oil.Id == oil.Id))
                {
                    part.Problems.Add(part.Place, $"Oil '{oil.Id}' stands here twice.", "Add the two amounts into one line.");
                }

                parts.Add(new OilPart(oil, amount, measure, part.Place));
            }

            foreach ((string key, _) in given)
            {
                part.Take(key);
            }

            part.Done();
        }

        return parts;
    }

    private static void CheckRecipe(Fields fields, Grams? waxWeight, FragranceLoad? load, List<OilPart> oils)
    {
        bool shares = oils.Any(o => o.Measure == OilMeasure.Share);
        if (shares && oils.Any(o => o.Measure != OilMeasure.Share))
        {
            fields.Problems.Add(
                fields.PlaceOf("oils"),
                "Shares and weighed amounts stand side by side.",
                "Give every oil a share, or give every oil grams, millilitres or drops."
            );
        }

        if (shares)
        {
            double total = oils.Sum(o => o.Amount);
            if (Math.Abs(total - 100) > 1e-6)
            {
                fields.Problems.Add(fields.PlaceOf("oils"), $"The shares of the oils add up to {Figures.Plain(total)} %, not 100 %.");
            }
        }

        if (oils.Count > 0 && load is null && !fields.Has("load") && (waxWeight is null || shares))
        {
            fields.Problems.Add(
                fields.Place,
                "The fragrance load is missing.",
                "Write 'load: { percent: 8, of: wax }' (or 'of: candle'), or weigh everything: 'waxGrams' and each oil in grams, millilitres or drops."
            );
        }

        if (load is not null && waxWeight is not null)
        {
            fields.Problems.Add(
                fields.PlaceOf("waxGrams"),
                "'load' and 'waxGrams' both fix how much oil there is.",
                "Keep one of the two."
            );
        }
    }

    private static List<ExtraPart> ReadExtras(Fields fields)
    {
        var extras = new List<ExtraPart>();
        foreach (Fields part in fields.Groups("extras"))
        {
            Reference extra = DeclarationReader.ReadReference(part, "extra");
            double? percent = part.OptionalNumber("percentOfWax", 0, 100);
            Grams? weight = ReadGrams(part, "grams");
            if ((percent is null) == (weight is null))
            {
                part.Problems.Add(part.Place, $"Extra '{extra.Id}' needs one amount.", "Write 'percentOfWax' or 'grams'.");
            }

            part.Done();
            extras.Add(new ExtraPart(extra, percent is { } p ? new MassPercent(p) : null, weight));
        }

        return extras;
    }

    private static TopUp? ReadTopUp(Fields fields)
    {
        Fields? group = fields.OptionalGroup("topUp");
        if (group is null)
        {
            return null;
        }

        if (!group.Has("scented"))
        {
            group.Problems.Add(
                group.Place,
                "'scented' is missing.",
                "Write 'scented: yes' when the second pour comes from the same scented melt, 'scented: no' when it is plain wax."
            );
        }

        bool scented = group.OptionalFlag("scented") ?? true;
        double? percent = group.OptionalNumber("percentOfCandle", 0, 90);
        Grams? weight = ReadGrams(group, "grams");
        if ((percent is null) == (weight is null) && !scented)
        {
            group.Problems.Add(group.Place, "An unscented second pour needs its amount.", "Write 'percentOfCandle' or 'grams'.");
        }

        group.Done();
        return new TopUp(scented, percent is { } p ? new MassPercent(p) : null, weight);
    }

    private static Wicks ReadWicks(Fields fields)
    {
        Fields? group = fields.OptionalGroup("wicks");
        if (group is null)
        {
            if (!fields.Has("wicks"))
            {
                fields.Problems.Add(fields.Place, "'wicks' is missing.", "Write 'wicks: { count: 1, trimToMm: 5 }'.");
            }

            return new Wicks(1, null, new Millimetres(5));
        }

        var wicks = new Wicks(
            (int)group.Number("count", 0, 200, "1"),
            group.OptionalText("kind"),
            new Millimetres(group.Number("trimToMm", 0, 30, "5"))
        );
        group.Done();
        return wicks;
    }

    private static WorkingTemperatures ReadTemperatures(Fields fields)
    {
        Fields? group = fields.OptionalGroup("temperatures");
        if (group is null)
        {
            return new WorkingTemperatures(null, null, null, null);
        }

        Celsius? Degrees(string key) => group.OptionalNumber(key, 0, 250) is { } value ? new Celsius(value) : null;
        var temperatures = new WorkingTemperatures(
            Degrees("meltCelsius"),
            Degrees("addFragranceCelsius"),
            Degrees("pourCelsius"),
            Degrees("topUpCelsius")
        );
        group.Done();
        return temperatures;
    }

    private static IReadOnlyList<string> ReadCountries(Fields fields)
    {
        IReadOnlyList<string> countries = fields.Texts("soldIn");
        if (countries.Count == 0 && !fields.Has("soldIn"))
        {
            fields.Problems.Add(
                fields.Place,
                "'soldIn' is missing.",
                "List the country codes of the places of sale, such as 'soldIn: [IE, DE]': they decide the law and the languages."
            );
        }

        return countries;
    }

    internal static LabelRequest? ReadLabel(Fields fields)
    {
        Fields? group = fields.OptionalGroup("label");
        if (group is null)
        {
            return null;
        }

        string shape = group.Has("shape") ? group.Choice("shape", "rectangle", "circle", "ring", "band", "leaflet") : "rectangle";
        LabelForm form = Enum.Parse<LabelForm>(shape, ignoreCase: true);
        double diameter = form is LabelForm.Circle or LabelForm.Ring ? group.Number("diameterMm", 5, 1000, "60") : 0;
        double height = diameter > 0 ? diameter : group.Number("heightMm", 5, 1000, "105");

        // A band's length comes from the vessel.
        double width =
            diameter > 0 ? diameter
            : form == LabelForm.Band ? 1
            : group.Number("widthMm", 5, 1000, "74");
        double corner = form == LabelForm.Rectangle ? group.OptionalNumber("cornerMm", 0, 100) ?? 0 : 0;
        double hole = form == LabelForm.Ring ? group.Number("holeMm", 0, 1000, "20") : 0;
        if (hole >= width || corner > Math.Min(width, height) / 2)
        {
            group.Problems.Add(group.Place, "The hole or the corner radius is larger than the label.");
        }

        group.Done();
        return new LabelRequest(
            form,
            new LabelSize(new Millimetres(width), new Millimetres(height)),
            new Millimetres(corner),
            new Millimetres(hole)
        );
    }

    // GS1 General Specifications, 7.9: from the right, weights 3 and 1 in turn.
    private static string? ReadGtin(Fields fields)
    {
        string? text = fields.OptionalText("gtin");
        if (text is null)
        {
            return null;
        }

        if (text.Length != 13 || !text.All(char.IsAsciiDigit))
        {
            fields.Problems.Add(fields.PlaceOf("gtin"), $"'{text}' is no GTIN-13.", "Write its thirteen digits in quotes.");
            return null;
        }

        int sum = text.Take(12).Select((c, i) => (c - '0') * (i % 2 == 0 ? 1 : 3)).Sum();
        int check = (10 - (sum % 10)) % 10;
        if (check != text[12] - '0')
        {
            fields.Problems.Add(fields.PlaceOf("gtin"), $"GTIN {text} fails its check digit: the digits call for {check}.");
        }

        return text;
    }

    private static string? ReadUrl(Fields fields)
    {
        string? text = fields.OptionalText("informationUrl");
        if (
            text is not null
            && (!Uri.TryCreate(text, UriKind.Absolute, out Uri? uri) || uri.Scheme is not ("https" or "http") || text.Length > 300)
        )
        {
            fields.Problems.Add(
                fields.PlaceOf("informationUrl"),
                $"'{text}' is no web address.",
                "Write it whole, such as https://candles.example/harbour-bowl."
            );
        }

        return text;
    }
}
