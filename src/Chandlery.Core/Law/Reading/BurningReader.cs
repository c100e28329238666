using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads <c>burning.yaml</c>: figures of the burn-safety advice.</summary>
internal static class BurningReader
{
    public static BurnAdvice Read(Fields fields)
    {
        Fields distance = fields.Group("distanceBetweenCandlesCm", "{ indoor: 10, outdoor: 20, source: ... }");
        Fields spacing = fields.Group("wickSpacingCm", "{ low: 3, high: 4, source: ... }");
        var advice = new BurnAdvice(
            distance.Number("indoor", 0, 1000, "10"),
            distance.Number("outdoor", 0, 1000, "20"),
            Value(fields, "firstBurnHoursPerCm"),
            Value(fields, "longestBurnHours"),
            Value(fields, "remainingWaxMm")
        );
        distance.Text("source", "where the figures come from");
        distance.Done();
        spacing.Number("low", 0, 100, "3");
        spacing.Number("high", 0, 100, "4");
        spacing.Text("source", "where the figures come from");
        spacing.Done();
        fields.Done();
        return advice;
    }

    private static double Value(Fields fields, string key)
    {
        Fields group = fields.Group(key, "{ value: 4, source: ... }");
        group.Text("source", "where the figure comes from");
        double value = group.Number("value", 0, 1000, "4");
        group.Done();
        return value;
    }
}
