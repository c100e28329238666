using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads <c>small-packages.yaml</c>: what may be left off small packages.</summary>
internal sealed class SmallPackagesReader(LawCodes codes)
{
    private const string HazardStatements = "hazard";
    private const string PrecautionaryStatements = "precautionary";

    public SmallPackageRules Read(Fields fields)
    {
        var rows = new List<Relief>();
        foreach (Fields row in fields.Groups("relief"))
        {
            IReadOnlyList<string> what = row.Choices("leaveOff", HazardStatements, PrecautionaryStatements);
            rows.Add(
                new Relief(
                    codes.Categories(row, "hazards"),
                    what.Contains(HazardStatements),
                    what.Contains(PrecautionaryStatements),
                    row.OptionalFlag("notForPublic") ?? false,
                    LawCodes.Citation(row)
                )
            );
            row.Done();
        }

        var rules = new SmallPackageRules(new Millilitres(fields.Number("upToMl", -1, 100_000, "125")), LawCodes.Citation(fields), rows);
        fields.Done();
        return rules;
    }
}
