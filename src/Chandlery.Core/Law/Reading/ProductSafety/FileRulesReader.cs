using Chandlery.Core.Law.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading.ProductSafety;

/// <summary>Reads <c>technical-file/risks.yaml</c>: risks and standards that a technical file looks at.</summary>
internal static class FileRulesReader
{
    private const int Highest = 5;
    private const int MostSamples = 100;

    public static FileRules Read(Fields fields)
    {
        Fields samples = fields.Group("samples", "{ fewest: 3, source: ... }");
        int fewest = (int)samples.Number("fewest", 0, MostSamples, "3");
        samples.Text("source", "where the figure comes from");
        samples.Done();
        var rules = new FileRules(
            [.. fields.Groups("risks").Select(ReadRisk)],
            [.. fields.Groups("standards").Select(ReadStandard)],
            fewest
        );
        fields.Text("source", "where the rows come from");
        fields.Done();
        return rules;
    }

    private static RiskRow ReadRisk(Fields row)
    {
        var risk = new RiskRow(
            row.Text("id", "flare-up"),
            row.Enumeration("when", RiskWhen.Always),
            row.Text("risk", "what may happen"),
            (int)row.Number("likelihood", 0, Highest, "3"),
            (int)row.Number("severity", 0, Highest, "4"),
            row.Text("measure", "what is done"),
            row.Enumeration("proof", RiskProof.Card)
        );
        risk = risk with { Of = SafetyRows.Sorts(row) ?? risk.Of };
        row.Done();
        return risk;
    }

    private static StandardRow ReadStandard(Fields row)
    {
        var standard = new StandardRow(
            row.Text("name", "number and year"),
            row.Text("about", "what it is about"),
            row.Text("applied", "what of it is applied")
        );
        LawRows.Close(row);
        return standard;
    }
}
