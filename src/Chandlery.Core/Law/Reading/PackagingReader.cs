using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads <c>packaging.yaml</c>: what a package for the public must have beside its label.</summary>
internal sealed class PackagingReader(LawCodes codes)
{
    public IReadOnlyList<PackagingDuty> Read(Fields fields)
    {
        List<PackagingDuty> duties = [.. fields.Groups("duties").Select(ReadDuty)];
        fields.Done();
        return duties;
    }

    private PackagingDuty ReadDuty(Fields row)
    {
        var duty = new PackagingDuty(
            row.Enumeration("feature", PackagingFeature.ChildResistant),
            codes.CategoriesOrClasses(row, "hazards"),
            row.Texts("cas"),
            new MassPercent(row.OptionalNumber("fromPercent", 0, 100) ?? 0),
            row.Text("standard", "EN ISO 8317"),
            LawCodes.Citation(row)
        );
        LawRows.Close(row);
        return duty;
    }
}
