using Chandlery.Core.Law.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading.ProductSafety;

/// <summary>Reads <c>packaging.yaml</c>: marks on packaging and registers of its producers.</summary>
internal sealed class MarkReader(IReadOnlyDictionary<string, string> places)
{
    public PackagingRules Read(Fields fields)
    {
        var rules = new PackagingRules([.. fields.Groups("marks").Select(ReadRow)]);
        fields.Done();
        return rules;
    }

    private MarkRow ReadRow(Fields row)
    {
        var mark = new MarkRow(
            SafetyRows.Places(row, "soldIn", places),
            SafetyRows.Days(row),
            row.Text("says", "what is due"),
            LawCodes.Citation(row)
        );
        LawRows.Close(row);
        return mark;
    }
}
