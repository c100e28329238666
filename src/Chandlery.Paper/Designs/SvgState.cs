using System.Globalization;
using System.Xml.Linq;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs;

/// <summary>What an SVG element has from those around it.</summary>
/// <param name="Scale">Millimetres of the drawing in its unit.</param>
/// <param name="X">Where its origin lies.</param>
/// <param name="Y">Where its origin lies.</param>
/// <param name="Fill">Fill; null for none.</param>
/// <param name="Stroke">Line; null for none.</param>
/// <param name="StrokeWidth">Width of its lines, in its unit.</param>
internal readonly record struct SvgState(double Scale, double X, double Y, Ink? Fill, Ink? Stroke, double StrokeWidth)
{
    /// <summary>The state inside an element.</summary>
    /// <exception cref="FormatException">A colour or a transformation that cannot be printed.</exception>
    public SvgState With(XElement element)
    {
        SvgState state = this;
        foreach (string step in ((string?)element.Attribute("transform") ?? "").Split(')', StringSplitOptions.RemoveEmptyEntries))
        {
            double[] numbers = [.. SvgLogo.Numbers(step[(step.IndexOf('(', StringComparison.Ordinal) + 1)..])];
            state = (step.Split('(')[0].Trim(), numbers) switch
            {
                ("translate", [var x]) => state with { X = state.X + (x * state.Scale) },
                ("translate", [var x, var y]) => state with { X = state.X + (x * state.Scale), Y = state.Y + (y * state.Scale) },
                ("scale", [var s]) => state with { Scale = state.Scale * s },
                ("scale", [var s, var t]) when s == t => state with { Scale = state.Scale * s },
                ("matrix", [var a, 0, 0, var d, var x, var y]) when a == d => state with
                {
                    X = state.X + (x * state.Scale),
                    Y = state.Y + (y * state.Scale),
                    Scale = state.Scale * a,
                },
                _ => throw new FormatException(
                    $"the transformation '{step.Trim()})' is more than moving and scaling: apply it to the paths and save again"
                ),
            };
        }

        return state with
        {
            Fill = element.Attribute("fill") is { } fill ? Colour(fill.Value) : state.Fill,
            Stroke = element.Attribute("stroke") is { } stroke ? Colour(stroke.Value) : state.Stroke,
            StrokeWidth = element.Attribute("stroke-width") is { } width
                ? double.Parse(width.Value.Replace("px", "", StringComparison.Ordinal), CultureInfo.InvariantCulture)
                : state.StrokeWidth,
        };
    }

    private static Ink? Colour(string text) =>
        text.Trim().ToLowerInvariant() switch
        {
            "none" => null,
            "black" or "#000" or "#000000" or "currentcolor" => Ink.Black,
            "white" or "#fff" or "#ffffff" => Ink.White,
            { Length: 4 } s when s[0] == '#' => Ink.Of($"#{s[1]}{s[1]}{s[2]}{s[2]}{s[3]}{s[3]}"),
            var other => Ink.Of(other),
        };
}
