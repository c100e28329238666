using Chandlery.Core.Quantities;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads what somebody measured of a liquid or a wax.</summary>
internal static class MeasuredReader
{
    /// <summary>A density; null when none is given.</summary>
    public static GramsPerMillilitre? ReadDensity(Fields fields, NumberField field) =>
        fields.OptionalNumber(field) is { } value ? new GramsPerMillilitre(value) : null;

    /// <summary>A flash point; null when none is given.</summary>
    public static FlashPoint? ReadFlashPoint(Fields fields)
    {
        Fields? group = fields.OptionalGroup(OilShape.FlashPoint);
        if (group is null)
        {
            return null;
        }

        double? exact = group.OptionalNumber(OilShape.Celsius);
        double? above = group.OptionalNumber(OilShape.AboveCelsius);
        string? method = group.OptionalText(OilShape.Method);
        if ((exact is null) == (above is null))
        {
            group.Problems.Add(
                group.Place,
                "'flashPoint' must have either 'celsius' or 'aboveCelsius'.",
                "A sheet that prints '> 93' means aboveCelsius: 93."
            );
        }

        group.Done();
        return new FlashPoint(new Celsius(exact ?? above ?? 0), above is not null, method);
    }
}
