using Chandlery.Core.Quantities;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads candles and batches.</summary>
internal static class CandleReader
{
    public static Candle ReadCandle(Fields fields, string id, IngredientReader ingredients)
    {
        string name = fields.Text(CandleShape.Name);
        CandleUse use = fields.Choice(CandleShape.Use) == "outdoor" ? CandleUse.Outdoor : CandleUse.Indoor;
        Reference? kind = Optional(fields, CandleShape.Kind);
        Reference? vessel = kind is null ? ReferenceReader.Read(fields, CandleShape.Vessel) : Optional(fields, CandleShape.Vessel);
        LiquidFacts? liquid = LiquidReader.Read(fields, ingredients);
        (Grams netMass, Millilitres? netVolume) = LiquidReader.ReadNet(fields, liquid);
        Reference wax = ReadWaxOrBase(fields, kind);
        Grams? waxWeight = ReadGrams(fields, CandleShape.WaxWeight);
        FragranceLoad? load = LoadReader.Read(fields, CandleShape.Load);
        List<OilPart> oils = ReadOils(fields, PourShape.Oils);
        CheckRecipe(fields, waxWeight, load, oils);
        return new Candle
        {
            Id = id,
            Place = fields.Place,
            Name = name,
            Kind = kind,
            Use = use,
            Vessel = vessel,
            Size = VesselReader.ReadSize(fields, CandleShape.Size),
            NetMass = netMass,
            NetVolume = netVolume,
            Liquid = liquid,
            IfraCategory = fields.OptionalText(CandleShape.IfraCategory),
            Wax = wax,
            WaxWeight = waxWeight,
            Load = load,
            Oils = oils,
            Extras = ReadExtras(fields, PourShape.Extras),
            TopUp = ReadTopUp(fields, PourShape.TopUp),
            Wicks = kind is null || fields.Has(CandleShape.Wicks) ? ReadWicks(fields) : Wicks.None,
            Headspace = fields.OptionalNumber(CandleShape.Headspace) is { } mm ? new Millimetres(mm) : null,
            Temperatures = ReadTemperatures(fields),
            SoldIn = ReadCountries(fields),
            Languages = CodeLists.Languages(fields, CandleShape.Languages.Key),
            Label = LabelReader.Read(fields, CandleShape.Label),
            Design = BrandReader.ReadDesign(fields, CandleShape.Design),
            LabelStands = ReadLabelPlace(fields),
            BatchCode = fields.OptionalText(CandleShape.BatchCode),
            FormulationNumber = fields.OptionalNumber(CandleShape.FormulationNumber) is { } number ? (long)number : null,
            ProductCategory = NotifiedShape.ReadProductCategory(fields),
            OnMarketSince = fields.OptionalDay(CandleShape.OnMarketSince),
            Gtin = ReadGtin(fields),
            InformationUrl = ReadUrl(fields),
            Picture = BrandReader.ReadFile(fields, CandleShape.Picture) is { } picture
                ? new PictureFile(picture, fields.PlaceOf(CandleShape.Picture))
                : null,
            Answers = AnswersReader.Read(fields),
            Packaging = KeepingReader.ReadPackaging(fields),
            WorkMinutes = fields.OptionalNumber(CandleShape.Minutes),
            IsRefilledInShop = fields.OptionalFlag(CandleShape.RefilledInShop) ?? false,
            EMark = fields.OptionalFlag(PackagingShape.EMark) ?? false,
        };
    }

    private static Reference? Optional(Fields fields, TextField field) => fields.Has(field) ? ReferenceReader.Read(fields, field) : null;

    // A liquid has a base in the place of a wax, and is of a kind that says so.
    private static Reference ReadWaxOrBase(Fields fields, Reference? kind)
    {
        if (!fields.Has(CandleShape.Base) && !fields.Has(CandleShape.NetVolume))
        {
            if (fields.Take(LiquidShape.Liquid) is { } liquid)
            {
                fields.Problems.Add(
                    liquid.Place,
                    "'liquid' is of liquids alone.",
                    "Write 'base' and 'netMillilitres', or leave 'liquid' out."
                );
            }

            return ReferenceReader.Read(fields, CandleShape.Wax);
        }

        if (fields.Has(CandleShape.Wax))
        {
            fields.Take(CandleShape.Wax);
            fields.Problems.Add(
                fields.PlaceOf(CandleShape.Wax),
                "'wax' is of solids, and 'base' or 'netMillilitres' say that this is a liquid.",
                "Keep 'base' and leave 'wax' out, or the other way round."
            );
        }

        if (kind is null)
        {
            fields.Problems.Add(
                fields.Place,
                "A liquid needs its 'kind'.",
                "Write 'kind: reed-diffuser' or another; 'chandlery kinds' lists them."
            );
        }

        return ReferenceReader.Read(fields, CandleShape.Base);
    }

    private static LabelPlace ReadLabelPlace(Fields fields) =>
        !fields.Has(CandleShape.LabelStands)
            ? LabelPlace.OnVessel
            : fields.Choice(CandleShape.LabelStands) switch
            {
                "onTag" => LabelPlace.OnTag,
                "onOuterPackage" => LabelPlace.OnOuterPackage,
                _ => LabelPlace.OnVessel,
            };

    public static Batch ReadBatch(Fields fields, string id)
    {
        Reference candle = ReferenceReader.Read(fields, BatchShape.Candle);
        string code = fields.Text(BatchShape.Code);
        DateOnly poured = fields.Day(BatchShape.Poured);
        Fields weighed = fields.Group(BatchShape.Weighed, "A batch is what was really weighed: 'waxGrams' and 'oils' with grams.");
        var waxWeight = new Grams(weighed.Number(weighed.Has(CandleShape.BaseWeight) ? CandleShape.BaseWeight : BatchShape.WaxWeight));
        if (!weighed.Has(PourShape.WeighedOils))
        {
            weighed.Lacks(PourShape.WeighedOils, "List each oil with its grams; write 'oils: []' when the batch was poured without any.");
        }

        List<OilPart> oils = ReadOils(weighed, PourShape.WeighedOils);
        foreach (OilPart part in oils.Where(p => p.Measure == OilMeasure.Share))
        {
            fields.Problems.Add(part.Place, "A batch needs what was weighed, not a share.", "Write 'grams' for each oil.");
        }

        List<ExtraPart> extras = ReadExtras(weighed, PourShape.WeighedExtras);
        if (extras.Any(e => e.Amount is not WeighedAmount))
        {
            fields.Problems.Add(weighed.PlaceOf(PourShape.WeighedExtras), "A batch needs the grams of each extra, not a percentage.");
        }

        TopUp? topUp = ReadTopUp(weighed, PourShape.WeighedTopUp);
        if (topUp is PlainTopUp { Amount: not WeighedAmount })
        {
            fields.Problems.Add(weighed.PlaceOf(PourShape.WeighedTopUp), "A batch needs the grams of the second pour, not a percentage.");
        }

        weighed.Done();
        fields.Texts(BatchShape.Lots);
        return new Batch
        {
            Id = id,
            Place = fields.Place,
            Candle = candle,
            Code = code,
            Poured = poured,
            WaxWeight = waxWeight,
            Oils = oils,
            Made = fields.OptionalNumber(BatchShape.Made) is { } made ? (int)made : null,
            Lots = [.. fields.List(BatchShape.Lots.Key).OfType<YamlScalar>().Select(l => new Reference(l.Text.Trim(), l.Place))],
            Extras = extras,
            TopUp = topUp,
        };
    }

    private static Grams? ReadGrams(Fields fields, NumberField field) =>
        fields.OptionalNumber(field) is { } grams ? new Grams(grams) : null;

    internal static List<OilPart> ReadOils(Fields fields, GroupsField list)
    {
        (NumberField Field, OilMeasure Measure)[] measures =
        [
            (PourShape.Share, OilMeasure.Share),
            (PourShape.Grams, OilMeasure.Grams),
            (PourShape.Millilitres, OilMeasure.Millilitres),
            (PourShape.Drops, OilMeasure.Drops),
        ];
        var parts = new List<OilPart>();
        foreach (Fields part in fields.Groups(list))
        {
            Reference oil = ReferenceReader.Read(part, PourShape.Oil);
            var given = measures.Where(m => part.Has(m.Field)).ToList();
            if (given.Count != 1)
            {
                part.Problems.Add(
                    part.Place,
                    $"Oil '{oil.Id}' needs one amount.",
                    "Write one of 'share' (percent of the blend), 'grams', 'millilitres' or 'drops'."
                );
            }

            foreach ((NumberField field, OilMeasure measure) in given.Take(1))
            {
                double amount = part.Number(field);
                if (parts.Any(p => p.Oil.Id == oil.Id))
                {
                    part.Problems.Add(part.Place, $"Oil '{oil.Id}' stands here twice.", "Add the two amounts into one line.");
                }

                parts.Add(new OilPart(oil, amount, measure, part.Place));
            }

            foreach ((NumberField field, _) in given)
            {
                part.Take(field);
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
                fields.PlaceOf(PourShape.Oils),
                "Shares and weighed amounts stand side by side.",
                "Give every oil a share, or give every oil grams, millilitres or drops."
            );
        }

        if (shares)
        {
            double total = oils.Sum(o => o.Amount);
            if (Math.Abs(total - 100) > 1e-6)
            {
                fields.Problems.Add(
                    fields.PlaceOf(PourShape.Oils),
                    $"The shares of the oils add up to {Figures.Plain(total)} %, not 100 %."
                );
            }
        }

        if (oils.Count > 0 && load is null && !fields.Has(CandleShape.Load) && (waxWeight is null || shares))
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
                fields.PlaceOf(CandleShape.WaxWeight),
                "'load' and 'waxGrams' both fix how much oil there is.",
                "Keep one of the two."
            );
        }
    }

    private static List<ExtraPart> ReadExtras(Fields fields, GroupsField list)
    {
        var extras = new List<ExtraPart>();
        foreach (Fields part in fields.Groups(list))
        {
            Reference extra = ReferenceReader.Read(part, PourShape.Extra);
            Amount? amount = ReadAmount(part, PourShape.PercentOfWax);
            if (amount is null || HasTwoAmounts(part, PourShape.PercentOfWax))
            {
                part.Problems.Add(part.Place, $"Extra '{extra.Id}' needs one amount.", "Write 'percentOfWax' or 'grams'.");
            }

            part.Done();
            extras.Add(new ExtraPart(extra, amount ?? StandIn));
        }

        return extras;
    }

    private static TopUp? ReadTopUp(Fields fields, GroupField field)
    {
        Fields? group = fields.OptionalGroup(field);
        if (group is null)
        {
            return null;
        }

        if (!group.Has(PourShape.Scented))
        {
            group.Lacks(
                PourShape.Scented,
                "Write 'scented: yes' when the second pour comes from the same scented melt, 'scented: no' when it is plain wax."
            );
        }

        bool scented = group.OptionalFlag(PourShape.Scented) ?? true;
        Amount? amount = ReadAmount(group, PourShape.PercentOfCandle);
        if (!scented && (amount is null || HasTwoAmounts(group, PourShape.PercentOfCandle)))
        {
            group.Problems.Add(group.Place, "An unscented second pour needs its amount.", "Write 'percentOfCandle' or 'grams'.");
        }

        group.Done();
        return scented ? new ScentedTopUp(amount) : new PlainTopUp(amount ?? StandIn);
    }

    private static Amount StandIn { get; } = new WeighedAmount(new Grams(1));

    private static Amount? ReadAmount(Fields fields, NumberField share)
    {
        double? percent = fields.OptionalNumber(share);
        Grams? weight = ReadGrams(fields, PourShape.Grams);
        return percent is { } p ? new RelativeAmount(new MassPercent(p))
            : weight is { } grams ? new WeighedAmount(grams)
            : null;
    }

    private static bool HasTwoAmounts(Fields fields, NumberField share) => fields.Has(share) && fields.Has(PourShape.Grams);

    private static Wicks ReadWicks(Fields fields)
    {
        Fields group = fields.Group(CandleShape.Wicks, "Write 'wicks: { count: 1, trimToMm: 5 }'.");
        var wicks = new Wicks(
            (int)group.Number(CandleShape.WickCount),
            group.OptionalText(CandleShape.WickKind),
            new Millimetres(group.Number(CandleShape.TrimTo))
        )
        {
            Spacing = ReadSpacing(group),
        };
        group.Done();
        return wicks;
    }

    private static WickSpacing? ReadSpacing(Fields wicks)
    {
        if (wicks.OptionalGroup(CandleShape.WickSpacing) is not { } group)
        {
            return null;
        }

        double from = group.Number(CandleShape.SpacingFrom);
        double to = group.Number(CandleShape.SpacingTo);
        if (from > to)
        {
            group.Problems.Add(group.Place, $"The least distance of {from} mm is more than the greatest of {to} mm.");
        }

        group.Done();
        return new WickSpacing(new Millimetres(from), new Millimetres(to));
    }

    private static WorkingTemperatures ReadTemperatures(Fields fields)
    {
        Fields? group = fields.OptionalGroup(CandleShape.Temperatures);
        if (group is null)
        {
            return new WorkingTemperatures(null, null, null, null);
        }

        Celsius? Degrees(NumberField field) => group.OptionalNumber(field) is { } value ? new Celsius(value) : null;
        var temperatures = new WorkingTemperatures(
            Degrees(CandleShape.Melt),
            Degrees(CandleShape.AddFragrance),
            Degrees(CandleShape.Pour),
            Degrees(CandleShape.SecondPour)
        );
        group.Done();
        return temperatures;
    }

    internal static IReadOnlyList<Written<PlaceName>> ReadCountries(Fields fields)
    {
        IReadOnlyList<Written<PlaceName>> countries = CodeLists.Places(fields, CandleShape.SoldIn.Key);
        if (countries.Count == 0 && !fields.Has(CandleShape.SoldIn))
        {
            fields.Lacks(
                CandleShape.SoldIn,
                "List the places of sale by country code or name, such as 'soldIn: [IE, DE]': they decide the law and the languages."
            );
        }

        return countries;
    }

    private static Gtin13? ReadGtin(Fields fields)
    {
        if (fields.OptionalText(CandleShape.Gtin) is not { } text)
        {
            return null;
        }

        Parsed<Gtin13> gtin = Gtin13.Parse(text);
        if (!gtin.Success)
        {
            fields.Problems.Add(fields.PlaceOf(CandleShape.Gtin), gtin.Reason);
        }

        return gtin.OrNull();
    }

    private static string? ReadUrl(Fields fields)
    {
        string? text = fields.OptionalText(CandleShape.InformationUrl);
        if (
            text is not null
            && (!Uri.TryCreate(text, UriKind.Absolute, out Uri? uri) || uri.Scheme is not ("https" or "http") || text.Length > 300)
        )
        {
            fields.Problems.Add(
                fields.PlaceOf(CandleShape.InformationUrl),
                $"'{text}' is no web address.",
                "Write it whole, such as https://candles.example/harbour-bowl."
            );
        }

        return text;
    }
}
