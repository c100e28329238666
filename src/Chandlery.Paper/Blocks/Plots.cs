using System.Globalization;
using System.Xml.Linq;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Blocks;

/// <summary>Plots side by side with one key below them.</summary>
/// <param name="About">What they show, in words.</param>
/// <param name="Axis">What runs to the right.</param>
/// <param name="All">The plots.</param>
internal sealed record Plots(string About, string Axis, IReadOnlyList<LinePlot> All) : Block
{
    internal static readonly BlockKind Kind = new("plots", Read);

    private const double HeightMm = 46;
    private const double KeyMm = 5;
    private const double GapMm = 4;

    /// <inheritdoc/>
    internal override void Lay(Flow flow)
    {
        flow.FindRoom(0, HeightMm + KeyMm);
        if (flow.Region.Edges(flow.Y, flow.Y + HeightMm + KeyMm) is not { } free)
        {
            flow.Overflows(HeightMm + KeyMm);
            flow.Y += HeightMm + KeyMm;
            return;
        }

        double top = flow.Y;
        double width = (free.Right - free.Left - (GapMm * (All.Count - 1))) / All.Count;
        flow.Place(
            () => new TaggedItem(TagRole.Figure, [.. Draw(free.Left, top, width)]) { Alternative = About },
            new Mark("plots", free.Left, top, free.Right - free.Left, HeightMm + KeyMm)
        );
        flow.Y += HeightMm + KeyMm;
    }

    private IEnumerable<SceneItem> Draw(double left, double top, double width) =>
        [
            .. All.SelectMany((plot, i) => plot.Draw(Axis, left + (i * (width + GapMm)), top, width, HeightMm)),
            .. Key(left, top + HeightMm + (KeyMm / 2)),
        ];

    private IEnumerable<SceneItem> Key(double left, double middle)
    {
        double x = left + LinePlot.MarkMm;
        foreach ((PlotLine line, int i) in All[0].Lines.Select((line, i) => (line, i)))
        {
            yield return LinePlot.MarkAt(i, x, middle);
            TextItem name = Strokes.Text(line.Name, Weight.Regular, x + 2, middle + 1, LinePlot.TypeMm, Ink.Black);
            yield return name;
            x += name.WidthMm + 8;
        }
    }

    private static Plots? Read(XElement element, MarkupReading reading)
    {
        List<LinePlot> plots = [.. element.Elements("plot").Select(p => ReadPlot(p, reading))];
        if (plots.Count == 0)
        {
            reading.Complain(
                element,
                "There is no plot in it.",
                "Write <plot title=\"height, mm\"><line name=\"A\">1:20 2:24</line></plot>."
            );
            return null;
        }

        return new Plots((string?)element.Attribute("about") ?? "", (string?)element.Attribute("axis") ?? "", plots);
    }

    private static LinePlot ReadPlot(XElement element, MarkupReading reading) =>
        new(
            (string?)element.Attribute("title") ?? "",
            element.Attribute("limit") is { Value.Length: > 0 } ? reading.Number(element, "limit", 0) : null,
            [.. element.Elements("line").Select(l => new PlotLine((string?)l.Attribute("name") ?? "", Points(l, reading)))]
        );

    // Where nothing was measured, the value behind the colon is left out.
    private static List<(double At, double? Value)> Points(XElement line, MarkupReading reading)
    {
        var points = new List<(double, double?)>();
        foreach (string point in line.Value.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            string[] parts = point.Split(':');
            if (parts.Length == 2 && Number(parts[0]) is { } at && (parts[1].Length == 0 || Number(parts[1]) is not null))
            {
                points.Add((at, Number(parts[1])));
            }
            else
            {
                reading.Complain(
                    line,
                    $"'{point}' is no point of a plot.",
                    "Write where and how much, such as 4:26, or 4: where nothing was measured."
                );
            }
        }

        return points;
    }

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number) ? number : null;
}
