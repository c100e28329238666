using System.Globalization;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads a load, which must say what it is of.</summary>
internal static class LoadReader
{
    /// <summary>A load; null when none is given, or one that could mean two things.</summary>
    public static FragranceLoad? Read(Fields fields, GroupField field)
    {
        switch (fields.Take(field))
        {
            case null:
                return null;
            case YamlMap map:
                var group = new Fields(map, fields.Problems);
                double percent = group.Number(LoadShape.Percent);
                string basis = group.Choice(LoadShape.Of);
                group.Done();
                if (basis is "candle" or "product" && percent >= 100)
                {
                    fields.Problems.Add(group.Place, $"A {basis} of nothing but oil is no {basis}.");
                    percent = 1;
                }

                return new FragranceLoad(new MassPercent(percent), basis is "wax" or "base" ? LoadBasis.Wax : LoadBasis.Candle);
            case { } other:
                ExplainLoad(fields, field.Key, other);
                return null;
        }
    }

    private static void ExplainLoad(Fields fields, string key, YamlValue value)
    {
        string text = ((value as YamlScalar)?.Text ?? "").Replace("%", "", StringComparison.Ordinal).Trim();
        if (!double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double figure) || figure is < 0 or >= 100)
        {
            fields.Problems.Add(
                value.Place,
                $"'{key}' must say a percentage and what it is of.",
                $"Write '{key}: {{ percent: 10, of: wax }}'."
            );
            return;
        }

        var share = new MassPercent(figure);
        fields.Problems.Add(
            value.Place,
            $"'{key}: {text}' can mean two things: {share} of the wax is {FragranceLoad.WaxToCandle(share)} of the candle, "
                + $"and {share} of the candle is {FragranceLoad.CandleToWax(share)} of the wax.",
            $"Write '{key}: {{ percent: {text}, of: wax }}' or '{key}: {{ percent: {text}, of: candle }}'."
        );
    }
}
