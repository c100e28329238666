using Chandlery.Core.Asked.Ceilings;
using Chandlery.Core.Assessed;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Papers.LoadPlots;

/// <summary>Draws load against consequences: a lane for each consequence, filled where it holds.</summary>
public static class CeilingPlot
{
    private const double WidthMm = 190;
    private const double EdgeMm = 6;
    private const double RightMm = 10;
    private const double TopMm = 24;
    private const double LaneMm = 9;
    private const double BarMm = 5.5;
    private const double TypeMm = 2.8;
    private const double LineMm = 0.3;
    private const double WidestNameMm = 66;
    private const int MostFigures = 10;

    /// <summary>The plot.</summary>
    /// <param name="a">The candle.</param>
    /// <param name="varied">What is varied.</param>
    /// <param name="now">Where the candle is now, as a fraction.</param>
    /// <param name="ceilings">Where something begins or ends.</param>
    public static Scene Draw(Assessment a, Varied varied, double now, IReadOnlyList<Ceiling> ceilings)
    {
        double last = End(varied, now, ceilings);
        Consequence[] lanes =
        [
            .. ceilings.SelectMany(c => c.Consequences).DistinctBy(c => c.What).Where(l => Spans(l.What, ceilings, last).Any()),
        ];
        string[][] names = [.. lanes.Select(l => Lines(l.What))];
        double left = EdgeMm + names.SelectMany(n => n).Select(Width).DefaultIfEmpty(0).Max() + 4;
        double right = WidthMm - RightMm;
        double bottom = TopMm + (LaneMm * lanes.Length) + 1;
        double end = Percent(varied, a, last);
        double X(double fraction) => left + ((right - left) * Math.Min(Percent(varied, a, fraction), end) / end);
        var items = new List<SceneItem>();
        Text(items, $"{a.Candle.Name}: {Subject(varied)} and consequences", Weight.Bold, EdgeMm, 8, 4, Ink.Black);
        Text(items, $"{a.Edition.Name}, as of {a.AsOf:yyyy-MM-dd}", Weight.Regular, EdgeMm, 13, TypeMm, Ink.Black);
        for (int i = 0; i < lanes.Length; i++)
        {
            double y = TopMm + (LaneMm * i);
            for (int line = 0; line < names[i].Length; line++)
            {
                double middle = y + (LaneMm / 2) + ((line - ((names[i].Length - 1) / 2.0)) * TypeMm * 1.2);
                Text(items, names[i][line], Weight.Regular, EdgeMm, middle + (TypeMm * 0.36), TypeMm, Ink.Black);
            }

            foreach ((double from, double to) in Spans(lanes[i].What, ceilings, last))
            {
                items.AddRange(SeverityBar.Draw(lanes[i].Kind, X(from), y + ((LaneMm - BarMm) / 2), X(to) - X(from), BarMm));
            }
        }

        // The mark of the present value lies below the figures, which keep a white ground.
        Line(items, X(now), TopMm - 2, X(now), bottom, Ink.SignalRed, LineMm * 2);
        for (int i = 0; i < lanes.Length; i++)
        {
            double middle = TopMm + (LaneMm * i) + (LaneMm / 2);
            foreach ((double from, double to) in Spans(lanes[i].What, ceilings, last).Where(s => s.From > 0))
            {
                Figure(items, Label(varied, a, from), (X(from), X(to)), (left, right), middle);
            }
        }

        Line(items, left, bottom, right, bottom, Ink.Black, LineMm);
        foreach (double figure in PlotScale.Ticks(end, MostFigures))
        {
            double x = X(Fraction(varied, a, figure));
            string text = Figures.Rounded(figure, 1);
            Line(items, x, bottom, x, bottom + 1.5, Ink.Black, LineMm);
            Text(items, text, Weight.Regular, x - (Width(text) / 2), bottom + 5, TypeMm, Ink.Black);
        }

        Text(items, Axis(varied), Weight.Regular, left, bottom + 10, TypeMm, Ink.Black);
        string present = $"now {Label(varied, a, now)}";
        double presentWidth = Width(present, Weight.Bold);
        double presentLeft = X(now) + 1 + presentWidth > right ? X(now) - 1 - presentWidth : X(now) + 1;
        Text(items, present, Weight.Bold, presentLeft, TopMm - 1, TypeMm, Ink.SignalRed);
        return new Scene(WidthMm, bottom + 17, items, []);
    }

    // Before its bar; where there is no room, behind it or on it, and then it says that the bar begins there.
    private static void Figure(
        List<SceneItem> items,
        string text,
        (double From, double To) bar,
        (double Left, double Right) plot,
        double middle
    )
    {
        bool before = bar.From - Width(text, Weight.Bold) - 1 >= plot.Left;
        string shown = before ? text : $"from {text}";
        double width = Width(shown, Weight.Bold);
        double x =
            before ? bar.From - width - 1
            : bar.To + width + 1 <= plot.Right ? bar.To + 1
            : bar.From + 1;
        items.Add(new PathItem(Strokes.BoxPath(width + 0.8, TypeMm * 1.2), x - 0.4, middle - (TypeMm * 0.6), 1, Ink.White, null, 0));
        Text(items, shown, Weight.Bold, x, middle + (TypeMm * 0.36), TypeMm, Ink.Black);
    }

    // A name that is too long for its column goes on in a second line.
    private static string[] Lines(string name)
    {
        if (Width(name) <= WidestNameMm)
        {
            return [name];
        }

        int[] blanks = [.. Enumerable.Range(0, name.Length).Where(i => name[i] == ' ')];
        return blanks.Length == 0 ? [name] : Halves(name, blanks.MinBy(i => Math.Max(Width(name[..i]), Width(name[(i + 1)..]))));
    }

    private static string[] Halves(string name, int at) => [name[..at], name[(at + 1)..]];

    private static double Width(string text) => Width(text, Weight.Regular);

    private static double Width(string text, Weight weight) => Strokes.Text(text, weight, 0, 0, TypeMm, Ink.Black).WidthMm;

    private static string Subject(Varied varied) => varied == Varied.BlendShare ? "share of the blend" : "load";

    private static string Axis(Varied varied) =>
        varied switch
        {
            Varied.Load => "oil, % of the wax",
            Varied.OneOil => "this oil, % of the scented melt",
            _ => "this oil, % of the oil blend",
        };

    // Up to a little beyond the last thing that happens within twice the present load, at least half as much again as now.
    private static double End(Varied varied, double now, IReadOnlyList<Ceiling> ceilings)
    {
        if (varied == Varied.BlendShare)
        {
            return 1;
        }

        double last = ceilings.Select(c => c.Fraction).Where(f => f < now * 2.5).DefaultIfEmpty(now).Max();
        return Math.Min(0.5, Math.Max(now * 1.5, last * 1.1));
    }

    private static IEnumerable<(double From, double To)> Spans(string what, IReadOnlyList<Ceiling> ceilings, double last)
    {
        double? from = ceilings.SelectMany(c => c.Consequences).First(c => c.What == what).Begins ? null : 0;
        foreach (Ceiling ceiling in ceilings)
        {
            foreach (Consequence consequence in ceiling.Consequences.Where(c => c.What == what))
            {
                if (consequence.Begins)
                {
                    from = ceiling.Fraction;
                }
                else if (from is { } start)
                {
                    if (start < last)
                    {
                        yield return (start, Math.Min(last, ceiling.Fraction));
                    }

                    from = null;
                }
            }
        }

        if (from is { } open && open < last)
        {
            yield return (open, last);
        }
    }

    private static string Label(Varied varied, Assessment a, double fraction) => Figures.Rounded(Percent(varied, a, fraction), 2) + " %";

    // The axis and all figures have one measure: for the load oil on wax, with the extras that are part of the melt.
    private static double Percent(Varied varied, Assessment a, double fraction) =>
        100 * (varied == Varied.Load ? fraction * (1 + Extras(a)) / (1 - fraction) : fraction);

    private static double Fraction(Varied varied, Assessment a, double percent) =>
        varied == Varied.Load ? percent / (100 * (1 + Extras(a)) + percent) : percent / 100;

    private static double Extras(Assessment a) => a.Composition.Recipe.Extras.Sum(e => e.OfWax.Value) / 100;

    private static void Text(List<SceneItem> items, string text, Weight weight, double x, double y, double size, Ink ink) =>
        items.Add(Strokes.Text(text, weight, x, y, size, ink));

    private static void Line(List<SceneItem> items, double x1, double y1, double x2, double y2, Ink ink, double width) =>
        items.Add(Strokes.Line(x1, y1, x2, y2, ink, width));
}
