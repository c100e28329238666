using System.Text.RegularExpressions;
using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads one declaration file of any kind.</summary>
public sealed class DeclarationReader(HazardVocabulary vocabulary)
{
    private readonly IngredientReader ingredients = new(vocabulary);

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
            "oil" => ReadOil(fields, id),
            "wax" => ReadWax(fields, id),
            "base" => ReadBase(fields, id),
            "extra" => ReadExtra(fields, id),
            "maker" => ReadMaker(fields, id),
            "vessel" => ReadVessel(fields, id),
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

    private Oil ReadOil(Fields fields, string id) =>
        new Oil
        {
            Id = id,
            Place = fields.Place,
            Name = fields.Text(OilShape.Name),
            Supplier = fields.Text(OilShape.Supplier),
            Document = fields.Text(OilShape.Document),
            Revised = fields.Day(OilShape.Revised),
            Ingredients = ingredients.ReadTable(fields, required: true),
            OwnClaims = ingredients.ReadClaims(fields),
            FlashPoint = ReadFlashPoint(fields),
            Density = ReadDensity(fields, OilShape.Density),
            DropMass = fields.OptionalNumber(OilShape.DropMass) is { } milligrams ? new Grams(milligrams / 1000) : null,
            HighestLoad = ReadLoad(fields, OilShape.HighestLoad),
            Ifra = ReadIfra(fields),
            NotDeclared = fields.Texts(OilShape.NotDeclared),
            Source = NotifiedShape.ReadSource(fields),
            Draft = ReadDraft(fields),
            Note = ReadNote(fields),
        };

    private static Scent? ReadNote(Fields fields) =>
        fields.Has(OilShape.Note) ? Enum.Parse<Scent>(fields.Choice(OilShape.Note), ignoreCase: true) : null;

    private static DraftOrigin? ReadDraft(Fields fields)
    {
        if (fields.OptionalGroup(OilShape.Draft) is not { } draft)
        {
            return null;
        }

        var files = new List<string>();
        foreach (Fields source in draft.Groups(OilShape.From))
        {
            files.Add(source.Text(OilShape.DraftFile));
            source.Text(OilShape.DraftHash);
            source.Done();
        }

        TextPlace place = draft.PlaceOf(OilShape.Reviewed);
        Review? review = draft.Take(OilShape.Reviewed) switch
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
        var review = new Review(fields.Text(OilShape.By), fields.Day(OilShape.On));
        fields.Done();
        return review;
    }

    private Wax ReadWax(Fields fields, string id)
    {
        string name = fields.Text(WaxShape.Name);
        string supplier = fields.Text(WaxShape.Supplier);
        List<WaxPart> blend = [];
        foreach (Fields part in fields.Groups(WaxShape.Blend))
        {
            blend.Add(new WaxPart(ReadReference(part, WaxShape.Part), new MassPercent(part.Number(WaxShape.Percent))));
            part.Done();
        }

        double total = blend.Sum(p => p.Share.Value);
        if (blend.Count > 0 && Math.Abs(total - 100) > 1e-6)
        {
            fields.Problems.Add(fields.PlaceOf(WaxShape.Blend), $"The parts of the blend add up to {Figures.Plain(total)} %, not 100 %.");
        }

        if (blend.Count > 0 && fields.Has(IngredientShape.Table))
        {
            fields.Problems.Add(
                fields.PlaceOf(IngredientShape.Table),
                "A wax is either a blend of other waxes or has ingredients of its own.",
                "Keep one of the two."
            );
        }

        return new Wax
        {
            Id = id,
            Place = fields.Place,
            Name = name,
            Supplier = supplier,
            Ingredients = ingredients.ReadTable(fields, required: blend.Count == 0),
            Blend = blend,
            HighestLoad = ReadLoad(fields, WaxShape.HighestLoad),
            SolidDensity = ReadDensity(fields, WaxShape.SolidDensity),
            LiquidDensity = ReadDensity(fields, WaxShape.LiquidDensity),
            MeltingPoint = fields.OptionalNumber(WaxShape.Melting) is { } melting ? new Celsius(melting) : null,
            Source = NotifiedShape.ReadSource(fields),
        };
    }

    private Wax ReadBase(Fields fields, string id) =>
        new Wax
        {
            Id = id,
            Place = fields.Place,
            Name = fields.Text(WaxShape.Name),
            Supplier = fields.Text(WaxShape.Supplier),
            Ingredients = ingredients.ReadTable(fields, required: true),
            Blend = [],
            HighestLoad = ReadLoad(fields, BaseShape.HighestLoad),
            SolidDensity = null,
            LiquidDensity = ReadDensity(fields, BaseShape.Density),
            IsBase = true,
            Source = NotifiedShape.ReadSource(fields),
        };

    private Extra ReadExtra(Fields fields, string id) =>
        new Extra
        {
            Id = id,
            Place = fields.Place,
            Name = fields.Text(ExtraShape.Name),
            Supplier = fields.Text(ExtraShape.Supplier),
            Purpose = fields.Text(ExtraShape.Purpose),
            Ingredients = ingredients.ReadTable(fields, required: true),
            Highest = fields.OptionalNumber(ExtraShape.HighestPercent) is { } highest ? new MassPercent(highest) : null,
            Source = NotifiedShape.ReadSource(fields),
        };

    private static Maker ReadMaker(Fields fields, string id)
    {
        string name = fields.Text(MakerShape.Name);
        IReadOnlyList<string> address = fields.Texts(MakerShape.Address);
        if (address.Count == 0)
        {
            fields.Problems.Add(
                fields.PlaceOf(MakerShape.Address),
                "'address' is missing.",
                "List the lines of the postal address: the law asks for it on every label."
            );
        }

        string telephone = fields.Text(MakerShape.Telephone);
        string? email = fields.OptionalText(MakerShape.Email);
        string? web = fields.OptionalText(MakerShape.Web);
        string? emergency = fields.OptionalText(MakerShape.EmergencyTelephone);
        if (email is null && web is null)
        {
            fields.Problems.Add(
                fields.Place,
                "An electronic address is missing.",
                "Add 'email' or 'web': the law on product safety asks for one on the product."
            );
        }

        Fields? vat = fields.OptionalGroup(MakerShape.Vat);
        VatNumber? number = vat is null ? null : new VatNumber(vat.Text(MakerShape.Country), vat.Text(MakerShape.Number));
        vat?.Done();
        return new Maker
        {
            Id = id,
            Place = fields.Place,
            Name = name,
            AddressLines = address,
            Telephone = telephone,
            Email = email,
            Web = web,
            EmergencyTelephone = emergency,
            Vat = number,
            ProductCategory = NotifiedShape.ReadProductCategory(fields),
            Parties = PartyReader.Read(fields),
            Rates = ReadRates(fields),
            SharedRegister = ReadSharedRegister(fields),
        };
    }

    // maker.yaml is kept in the register word for word and for good, so no password may stand in it.
    private static string? ReadSharedRegister(Fields fields)
    {
        string? connection = fields.OptionalText(MakerShape.SharedRegister);
        if (connection is not null && !Regex.IsMatch(connection, MakerShape.SharedRegister.Pattern!))
        {
            fields.Problems.Add(
                fields.PlaceOf(MakerShape.SharedRegister),
                "'sharedRegister' names no host, or holds a password: the register keeps maker.yaml word for word, for every bench to read.",
                $"Write it like {MakerShape.SharedRegister.Example}, and give the password in the variable PGPASSWORD or in a password file (PGPASSFILE)."
            );
        }

        return connection;
    }

    private static Rates? ReadRates(Fields fields)
    {
        if (fields.OptionalGroup(MakerShape.Rates) is not { } group)
        {
            return null;
        }

        string currency = group.Text(MakerShape.Currency);
        if (group.Has(MakerShape.Currency) && !Regex.IsMatch(currency, MakerShape.Currency.Pattern!))
        {
            group.Problems.Add(
                group.PlaceOf(MakerShape.Currency),
                $"'{currency}' in 'currency' is no currency.",
                "Write its three letters, such as EUR."
            );
        }

        var rates = new Rates(
            currency,
            group.OptionalNumber(MakerShape.PerHour) is { } hour ? new Money((decimal)hour) : null,
            group.OptionalNumber(MakerShape.Margin),
            group.OptionalNumber(MakerShape.Tax)
        );
        group.Done();
        return rates;
    }

    private static Vessel ReadVessel(Fields fields, string id)
    {
        string name = fields.Text(VesselShape.Name);
        string material = fields.Text(VesselShape.Material);
        var brimful = new Millilitres(fields.Number(VesselShape.Brimful));
        Millilitres? fill = fields.OptionalNumber(VesselShape.Fill) is { } f ? new Millilitres(f) : null;
        if (fill is { } line && line.Value > brimful.Value)
        {
            fields.Problems.Add(fields.PlaceOf(VesselShape.Fill), $"The fill of {line} is more than the {brimful} to the brim.");
        }

        return new Vessel
        {
            Id = id,
            Place = fields.Place,
            Name = name,
            Material = material,
            Brimful = brimful,
            Fill = fill,
            Pieces = (int)(fields.OptionalNumber(VesselShape.Pieces) ?? 1),
            Inner = ReadSize(fields, VesselShape.Inner),
            Outer = ReadSize(fields, VesselShape.Outer),
            IsChildResistant = fields.OptionalFlag(VesselShape.ChildResistant) ?? false,
            HasTactileWarning = fields.OptionalFlag(VesselShape.TactileWarning) ?? false,
        };
    }

    internal static VesselSize? ReadSize(Fields fields, GroupField field)
    {
        Fields? size = fields.OptionalGroup(field);
        if (size is null)
        {
            return null;
        }

        OutlineSection? outline = field == VesselShape.Inner ? OutlineReader.Read(size) : null;
        Millimetres? diameter = Length(size, VesselShape.Diameter);
        Millimetres? length = Length(size, VesselShape.Length);
        Millimetres? width = Length(size, VesselShape.Width);
        var height = new Millimetres(size.Number(VesselShape.Height));
        bool isOutline = size.Has(VesselShape.Outline);
        if (
            isOutline
                ? diameter is not null || length is not null || width is not null
                : (diameter is null) == (length is null) || (length is null) != (width is null)
        )
        {
            size.Problems.Add(
                size.Place,
                $"'{field.Key}' must have either 'diameterMm' or both 'lengthMm' and 'widthMm'{(field == VesselShape.Inner ? ", or 'outlineMm'" : "")}."
            );
        }

        size.Done();
        CrossSection section =
            outline is not null ? outline
            : length is { } one && width is { } other ? new RectangularSection(one, other)
            : new RoundSection(diameter ?? new Millimetres(1));
        return new VesselSize(section, height);
    }

    private static Millimetres? Length(Fields fields, NumberField field) =>
        fields.OptionalNumber(field) is { } value ? new Millimetres(value) : null;

    internal static GramsPerMillilitre? ReadDensity(Fields fields, NumberField field) =>
        fields.OptionalNumber(field) is { } value ? new GramsPerMillilitre(value) : null;

    internal static FlashPoint? ReadFlashPoint(Fields fields)
    {
        Fields? group = fields.OptionalGroup(OilShape.FlashPoint);
        if (group is null)
        {
            return null;
        }

        double? exact = group.OptionalNumber(OilShape.Celsius);
        double? above = group.OptionalNumber(OilShape.AboveCelsius);
        string? method = group.OptionalText(OilShape.Method);
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
        Fields? group = fields.OptionalGroup(OilShape.Ifra);
        if (group is null)
        {
            return null;
        }

        var amendment = (int)group.Number(OilShape.Amendment);
        DateOnly date = group.Day(OilShape.Date);
        var limits = new Dictionary<string, IfraLimit>();
        foreach (YamlEntry entry in group.Entries(OilShape.Limits))
        {
            limits[entry.Key.ToUpperInvariant()] = (entry.Value as YamlScalar)?.Text switch
            {
                OilShape.NotRestricted => new IfraLimit(MassPercent.Whole),
                OilShape.NotPermitted => new IfraLimit(MassPercent.Zero),
                _ => new IfraLimit(new MassPercent(group.ReadNumber(entry.Value, $"the limit of category {entry.Key}", OilShape.Limit))),
            };
        }

        group.Done();
        return new IfraCertificate(amendment, date, limits);
    }

    internal static FragranceLoad? ReadLoad(Fields fields, GroupField field)
    {
        switch (fields.Take(field))
        {
            case null:
                return null;
            case YamlMap map:
                var group = new Fields(map, fields.Problems);
                double percent = group.Number(LoadShape.Percent);
                string basis = group.Choice(LoadShape.Of);
                group.Done();
                if (basis is "candle" or "product" && percent >= 100)
                {
                    fields.Problems.Add(group.Place, $"A {basis} of nothing but oil is no {basis}.");
                    percent = 1;
                }

                return new FragranceLoad(new MassPercent(percent), basis is "wax" or "base" ? LoadBasis.Wax : LoadBasis.Candle);
            case { } other:
                ExplainLoad(fields, field.Key, other);
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

    internal static Reference ReadReference(Fields fields, TextField field)
    {
        string id = fields.Text(field);
        return new Reference(id, fields.PlaceOf(field));
    }
}
