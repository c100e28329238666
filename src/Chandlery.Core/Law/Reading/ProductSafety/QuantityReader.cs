using Chandlery.Core.Law.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading.ProductSafety;

/// <summary>Reads <c>quantity.yaml</c>: what contents packages may have.</summary>
internal static class QuantityReader
{
    private const double MostGrams = 1_000_000;

    public static QuantityRules Read(Fields fields)
    {
        var rules = new QuantityRules(
            [.. fields.Groups("tolerances").Select(ReadRow)],
            fields.NumberFrom("sharePercent", 0, 100, "2.5"),
            fields.Number("times", 0, 10, "2"),
            fields.Number("markHeightMm", 0, 100, "3"),
            LawCodes.Citation(fields)
        );
        LawRows.Close(fields);
        return rules;
    }

    private static ToleranceRow ReadRow(Fields row)
    {
        bool percent = row.Has("percent");
        var tolerance = new ToleranceRow(
            row.NumberFrom("aboveGrams", 0, MostGrams, "50"),
            row.Number("upToGrams", 0, MostGrams, "100"),
            percent ? row.Number("percent", 0, 100, "9") : null,
            percent ? null : row.Number("grams", 0, MostGrams, "4.5")
        );
        row.OptionalText("confidence");
        row.Done();
        return tolerance;
    }
}
