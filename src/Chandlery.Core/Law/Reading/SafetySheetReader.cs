using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads what the law says on safety data sheets, and the sheets' words.</summary>
internal sealed class SafetySheetReader(LawCodes codes, IReadOnlyCollection<string> editions)
{
    public SafetySheetRules Read(Fields fields)
    {
        Fields duty = fields.Group("duty", "{ classified: ..., forPublic: ..., onRequest: ..., notDue: ... }");
        var rules = new SafetySheetRules(
            fields.Text("format", "the name of the format"),
            LawCodes.Citation(fields, "formatClause"),
            fields.Texts("without"),
            Texts(fields, "headings"),
            ReadDuty(duty, "classified"),
            ReadDuty(duty, "forPublic"),
            ReadDuty(duty, "onRequest"),
            ReadDuty(duty, "notDue"),
            duty.Has("labelNote") ? ReadDuty(duty, "labelNote") : null,
            [.. fields.Groups("onRequestFrom").Select(ReadRow)],
            [.. fields.Groups("namedFrom").Select(ReadRow)],
            ReadRequirement(fields),
            ReadTransport(fields)
        );
        duty.OptionalText("confidence");
        duty.Done();
        fields.Done();
        return rules;
    }

    public static SheetWords ReadWords(Fields fields)
    {
        var words = new SheetWords(
            fields.Text("language", "en"),
            fields.Text("checked", "how"),
            Texts(fields, "headings"),
            Texts(fields, "words")
        );
        fields.Done();
        return words;
    }

    public static IReadOnlyList<SheetAdvice> ReadAdvice(Fields fields)
    {
        var advice = new List<SheetAdvice>();
        foreach (Fields row in fields.Groups("advice"))
        {
            advice.Add(new SheetAdvice(row.Text("in", "4.1"), row.Text("text", "the text"), row.Texts("when"), row.Texts("unless")));
            row.Done();
        }

        fields.Done();
        return advice;
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

    private TransportRules ReadTransport(Fields fields)
    {
        Fields group = fields.Group("transport", "{ classes: [...], unNumber: UN 3077, ... }");
        Fields small = group.Group("smallPackages", "{ upToKilograms: 5, clause: ... }");
        var transport = new TransportRules(
            ReadEdition(group),
            codes.CategoriesOrClasses(group, "classes"),
            group.Text("unNumber", "UN 3077"),
            group.Text("name", "the proper shipping name"),
            group.Text("class", "9"),
            group.Text("packingGroup", "III"),
            (int)group.Number("mostNames", 0, 10, "2"),
            LawCodes.Citation(group),
            new Grams(small.Number("upToKilograms", 0, 1000, "5") * 1000),
            LawCodes.Citation(small),
            group.Text("notRegulated", "Not regulated."),
            group.Text("notTested", "Not tested.")
        );
        small.OptionalNumber("upToLitres", 0, 1000);
        small.Done();
        group.OptionalText("confidence");
        group.Done();
        return transport;
    }

    private string ReadEdition(Fields fields)
    {
        string edition = fields.Text("classifiedBy", "un-ghs");
        if (!editions.Contains(edition))
        {
            string near = Suggestion.Nearest(edition, editions) is { } guess ? $"Did you mean '{guess}'?" : "";
            fields.Problems.Add(fields.PlaceOf("classifiedBy"), $"There is no edition of the law named '{edition}'.", near);
        }

        return edition;
    }

    private static Dictionary<string, string> Texts(Fields fields, string key) =>
        fields.Entries(key).ToDictionary(e => e.Key, e => (e.Value as YamlScalar)?.Text ?? "");
}
