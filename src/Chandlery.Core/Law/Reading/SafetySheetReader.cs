using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads what an edition of the law says on safety data sheets.</summary>
internal sealed class SafetySheetReader(LawCodes codes, SheetSentenceReader sentences, IReadOnlyCollection<string> editions)
{
    private const double GramsPerKilogram = 1000;
    private const double MillilitresPerLitre = 1000;

    public SafetySheetRules Read(Fields fields)
    {
        Fields duty = fields.Group("duty", "{ classified: ..., forPublic: ..., onRequest: ..., notDue: ... }");
        var rules = new SafetySheetRules
        {
            Format = fields.Text("format", "the name of the format"),
            FormatClause = LawCodes.Citation(fields, "formatClause"),
            Without = fields.Texts("without"),
            Headings = fields.NamedTexts("headings"),
            Classified = ReadDuty(duty, "classified"),
            ForPublic = ReadDuty(duty, "forPublic"),
            OnRequest = ReadDuty(duty, "onRequest"),
            NotDue = ReadDuty(duty, "notDue"),
            LabelNote = duty.Has("labelNote") ? ReadDuty(duty, "labelNote") : null,
            OnRequestFrom = [.. fields.Groups("onRequestFrom").Select(ReadRow)],
            NamedFrom = [.. fields.Groups("namedFrom").Select(ReadRow)],
            EmergencyNumber = ReadRequirement(fields),
            Concerning = ReadConcerning(fields),
            LanguageClause = LawCodes.Citation(fields, "languageClause"),
            Sentences = sentences.ReadOwn(fields),
            Abbreviations = sentences.ReadAbbreviations(fields),
            Transport = ReadTransport(fields),
        };
        duty.OptionalText("confidence");
        duty.Done();
        fields.Done();
        return rules;
    }

    private static DutyClause ReadDuty(Fields duty, string key)
    {
        Fields group = duty.Group(key, "{ says: ..., clause: ... }");
        var clause = new DutyClause(group.Text("says", "what it means for the candle"), LawCodes.Citation(group));
        group.Done();
        return clause;
    }

    private ShareRow ReadRow(Fields row)
    {
        var read = new ShareRow(
            codes.CategoriesOrClasses(row, "hazards"),
            new MassPercent(row.Number("fromPercent", 0, 100, "1")),
            row.Has("ownLimitTimes") ? row.NumberFrom("ownLimitTimes", 0, 1, "1") : 0,
            row.Has("dividedByM") ? row.Enumeration("dividedByM", MFactorKind.None) : MFactorKind.None,
            LawCodes.Citation(row),
            row.Text("confidence", "from memory")
        );
        row.Done();
        return read;
    }

    private static Requirement ReadRequirement(Fields fields)
    {
        Fields group = fields.Group("emergencyNumber", "{ needed: yes, clause: ... }");
        var requirement = new Requirement(group.Flag("needed"), LawCodes.Citation(group));
        group.Done();
        return requirement;
    }

    private ConcerningRules ReadConcerning(Fields fields)
    {
        Fields group = fields.Group("concerning", "{ persistent: [PBT, vPvB], ..., fromPercent: 0.1, clause: ... }");
        group.OptionalText("confidence");
        var concerning = new ConcerningRules(
            codes.CategoriesOrClasses(group, "persistent"),
            codes.CategoriesOrClasses(group, "endocrineForHealth"),
            codes.CategoriesOrClasses(group, "endocrineForEnvironment"),
            new MassPercent(group.Number("fromPercent", 0, 100, "0.1")),
            LawCodes.Citation(group)
        );
        group.Done();
        return concerning;
    }

    private TransportRules ReadTransport(Fields fields)
    {
        Fields group = fields.Group("transport", "{ classes: [...], unNumber: UN 3077, ... }");
        Fields small = group.Group("smallPackages", "{ upToKilograms: 5, clause: ... }");
        Fields limited = group.Group("limited", "{ grossKilograms: 30, clause: ... }");
        var transport = new TransportRules
        {
            ClassifiedBy = ReadEdition(group),
            Solid = ReadEntry(group) with { NamesSubstances = true, IsFreeWhenSmall = true },
            Liquids = [.. group.Groups("liquids").Select(ReadLiquid)],
            LimitedGross = new Grams(limited.Number("grossKilograms", 0, 1000, "30") * GramsPerKilogram),
            LimitedClause = LawCodes.Citation(limited),
            MostNames = (int)group.Number("mostNames", 0, 10, "2"),
            Clause = LawCodes.Citation(group),
            SmallUpTo = new Grams(small.Number("upToKilograms", 0, 1000, "5") * GramsPerKilogram),
            SmallLiquidUpTo = new Millilitres(small.Number("upToLitres", 0, 1000, "5") * MillilitresPerLitre),
            SmallClause = LawCodes.Citation(small),
        };
        small.Done();
        limited.OptionalText("confidence");
        limited.Done();
        group.OptionalText("confidence");
        group.Done();
        return transport;
    }

    private TransportEntry ReadLiquid(Fields row)
    {
        TransportEntry entry = ReadEntry(row) with
        {
            NamesSubstances = row.OptionalFlag("namesSubstances") ?? false,
            IsFreeWhenSmall = row.OptionalFlag("smallPackagesFree") ?? false,
            LimitedUpTo =
                row.Has("limitedLitres") && row.NumberFrom("limitedLitres", 0, 1000, "5") is > 0 and var litres
                    ? new Millilitres(litres * MillilitresPerLitre)
                    : null,
        };
        row.Done();
        return entry;
    }

    private TransportEntry ReadEntry(Fields row) =>
        new(
            codes.CategoriesOrClasses(row, "classes"),
            row.Text("unNumber", "UN 3077"),
            row.Text("name", "the proper shipping name"),
            row.Text("class", "9"),
            row.Text("packingGroup", "III"),
            NamesSubstances: false,
            IsFreeWhenSmall: false
        );

    private string ReadEdition(Fields fields)
    {
        string edition = fields.Text("classifiedBy", "un-ghs");
        if (!editions.Contains(edition))
        {
            string near = Suggestion.DidYouMean(edition, editions);
            fields.Problems.Add(fields.PlaceOf("classifiedBy"), $"There is no edition of the law named '{edition}'.", near);
        }

        return edition;
    }
}
