using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads <c>small-packages.yaml</c>: what may be left off small packages.</summary>
internal sealed class SmallPackagesReader(LawCodes codes)
{
    private const string HazardStatements = "hazard";
    private const string PrecautionaryStatements = "precautionary";

    private static readonly Dictionary<string, InnerElement> Elements = new()
    {
        ["pictograms"] = InnerElement.Pictograms,
        ["signalWord"] = InnerElement.SignalWord,
        ["productName"] = InnerElement.ProductName,
        ["supplier"] = InnerElement.Supplier,
    };

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

        var rules = new SmallPackageRules(
            new Millilitres(fields.Number("upToMl", -1, 100_000, "125")),
            LawCodes.Citation(fields),
            rows,
            [.. fields.Groups("innerPackages").Select(ReadInner)],
            fields.OptionalGroup("tinyPackages") is { } tiny ? ReadTiny(tiny) : null
        );
        if (fields.OptionalGroup("outerPackages") is { } outer)
        {
            rules = rules with { OuterClause = LawCodes.Citation(outer) };
            LawRows.Close(outer);
        }

        fields.OptionalText("confidence");
        fields.Done();
        return rules;
    }

    private static InnerPackageRule ReadInner(Fields row)
    {
        IReadOnlyList<string> bears = row.Choices("bears", [.. Elements.Keys]);
        var rule = new InnerPackageRule([.. bears.Select(b => Elements[b])], ReadInForce(row), LawCodes.Citation(row));
        LawRows.Close(row);
        return rule;
    }

    private TinyPackageRule ReadTiny(Fields group)
    {
        var rule = new TinyPackageRule(
            new Millilitres(group.Number("upToMl", 0, 1000, "10")),
            codes.CategoriesOrClasses(group, "notWith"),
            [.. group.Choices("pictograms", [.. Pictogram.All.Select(p => p.Code)]).Select(c => Pictogram.Find(c)!)],
            ReadInForce(group),
            LawCodes.Citation(group)
        );
        LawRows.Close(group);
        return rule;
    }

    private static InForce ReadInForce(Fields row) => new(row.OptionalDay("from"), row.OptionalDay("until"));
}
