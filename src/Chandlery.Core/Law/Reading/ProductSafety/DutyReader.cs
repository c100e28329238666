using Chandlery.Core.Law.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading.ProductSafety;

/// <summary>Reads <c>duties.yaml</c>: what is due beside the hazard label.</summary>
internal sealed class DutyReader(IReadOnlyDictionary<string, string> places)
{
    public DutyRules Read(Fields fields)
    {
        var rules = new DutyRules([.. fields.Groups("duties").Select(ReadRow)]);
        fields.Done();
        return rules;
    }

    private DutyRow ReadRow(Fields row)
    {
        var duty = new DutyRow(
            row.Text("id", "technical-file"),
            SafetyRows.Days(row),
            SafetyRows.Places(row, "soldIn", places),
            row.Text("says", "what is due"),
            row.Enumeration("by", Artefact.Nothing),
            LawCodes.Citation(row)
        );
        duty = duty with { Of = SafetyRows.Sorts(row) ?? duty.Of };
        LawRows.Close(row);
        return duty;
    }
}
