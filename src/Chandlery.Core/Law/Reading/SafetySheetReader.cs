using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads what the law says on safety data sheets, and the sheets' words.</summary>
internal sealed class SafetySheetReader(HazardVocabulary vocabulary)
{
    private static readonly NumberField OwnLimitTimes = new("ownLimitTimes", "", "0.1", 0, 1) { LowAllowed = true };

    public SafetySheetRules Read(Fields fields)
    {
        Fields duty = fields.Group("duty", "the group of the clauses on when a sheet is due");
        var rules = new SafetySheetRules(
            fields.Text("format", "REACH Annex II"),
            fields.Text("formatClause", "REACH Art. 31"),
            fields.Texts("without"),
            Texts(fields, "headings"),
            ReadDuty(duty, "classified"),
            ReadDuty(duty, "forPublic"),
            ReadDuty(duty, "onRequest"),
            ReadDuty(duty, "notDue"),
            ReadDuty(duty, "labelNote"),
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
        Fields? group = duty.OptionalGroup(key);
        var clause = new DutyClause(group?.OptionalText("says") ?? "", group?.OptionalText("clause") ?? "");
        group?.Done();
        return clause;
    }

    private ShareRow ReadRow(Fields row)
    {
        var read = new ShareRow(
            Hazards(row, "hazards"),
            new MassPercent(row.Number("fromPercent", 0, 100, "1")),
            row.OptionalNumber(OwnLimitTimes) ?? 0,
            row.Has("dividedByM")
                ? (row.Choice("dividedByM", "acute", "chronic") == "acute" ? MWeight.Acute : MWeight.Chronic)
                : MWeight.None,
            row.Text("clause", "REACH Annex II, 3.2"),
            row.Text("confidence", "from memory")
        );
        row.Done();
        return read;
    }

    private static Requirement ReadRequirement(Fields fields)
    {
        Fields? group = fields.OptionalGroup("emergencyNumber");
        var requirement = new Requirement(group?.OptionalFlag("needed") ?? true, group?.OptionalText("clause") ?? "");
        group?.Done();
        return requirement;
    }

    private TransportRules ReadTransport(Fields fields)
    {
        Fields group = fields.Group("transport", "the group of the transport rules");
        Fields small = group.Group("smallPackages", "{ upToKilograms: 5, upToLitres: 5, clause: special provision 375 }");
        var transport = new TransportRules(
            Hazards(group, "classes"),
            group.Text("unNumber", "UN 3077"),
            group.Text("name", "the proper shipping name"),
            group.Text("class", "9"),
            group.Text("packingGroup", "III"),
            (int)group.Number("mostNames", 0, 10, "2"),
            group.Text("clause", "UN Model Regulations"),
            new Grams(small.Number("upToKilograms", 0, 1000, "5") * 1000),
            small.Text("clause", "special provision 375"),
            group.Text("notRegulated", "Not regulated."),
            group.Text("notTested", "Not tested.")
        );
        small.OptionalNumber("upToLitres", 0, 1000);
        small.Done();
        group.OptionalText("confidence");
        group.Done();
        return transport;
    }

    // A category by its full code, or a class with all its categories.
    private List<HazardCategory> Hazards(Fields fields, string key)
    {
        var found = new List<HazardCategory>();
        foreach (string text in fields.Texts(key))
        {
            List<HazardCategory> meant = [.. vocabulary.Categories.Where(c => c.Code == text || c.ClassCode == text)];
            if (meant.Count == 0)
            {
                fields.Problems.Add(fields.PlaceOf(key), $"'{text}' is no hazard class or category that is known here.");
            }

            found.AddRange(meant);
        }

        return found;
    }

    private static Dictionary<string, string> Texts(Fields fields, string key) =>
        fields.Entries(key).ToDictionary(e => e.Key, e => (e.Value as YamlScalar)?.Text ?? "");
}
