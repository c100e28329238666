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
    private const double LeftMm = 78;
    private const double RightMm = 8;
    private const double TopMm = 22;
    private const double LaneMm = 8;
    private const double TypeMm = 2.8;
    private const double LineMm = 0.4;

    /// <summary>The plot.</summary>
    /// <param name="a">The candle.</param>
    /// <param name="varied">What is varied.</param>
    /// <param name="now">Where the candle is now, as a fraction.</param>
    /// <param name="ceilings">Where something begins or ends.</param>
    public static Scene Draw(Assessment a, Varied varied, double now, IReadOnlyList<Ceiling> ceilings)
    {
        double last = End(varied, now, ceilings);
        string[] lanes =
        [
            .. ceilings.SelectMany(c => c.Consequences).Select(c => c.What).Distinct().Where(l => Spans(l, ceilings, last).Any()),
        ];
        double height = TopMm + (LaneMm * lanes.Length) + 18;
        var items = new List<SceneItem>();
        double X(double fraction) => LeftMm + ((WidthMm - LeftMm - RightMm) * Math.Min(fraction, last) / last);
        Text(items, $"{a.Candle.Name}: {Subject(varied)} and consequences", Weight.Bold, 6, 8, 4, Ink.Black);
        Text(items, $"{a.Edition.Name}, as of {a.AsOf:yyyy-MM-dd}", Weight.Regular, 6, 13, TypeMm, Ink.Grey);
        for (int i = 0; i < lanes.Length; i++)
        {
            double y = TopMm + (LaneMm * i);
            Text(items, Shorten(lanes[i]), Weight.Regular, 6, y + 5, TypeMm, Ink.Black);
            foreach ((double from, double to) in Spans(lanes[i], ceilings, last))
            {
                Box(items, X(from), y + 1, X(to) - X(from), LaneMm - 2, Ink.Grey);
                if (from > 0)
                {
                    Text(items, Label(varied, a, from), Weight.Bold, X(from) + 1, y + 5, TypeMm, Ink.White);
                }
            }
        }

        double bottom = TopMm + (LaneMm * lanes.Length) + 1;
        Line(items, LeftMm, bottom, WidthMm - RightMm, bottom, Ink.Black);
        foreach (double figure in Ticks(Percent(varied, a, last)))
        {
            double x = X(Fraction(varied, a, figure));
            Line(items, x, bottom, x, bottom + 1.5, Ink.Black);
            Text(items, Figures.Plain(Math.Round(figure, 1)), Weight.Regular, x - 1.5, bottom + 5, TypeMm, Ink.Black);
        }

        Text(items, Axis(varied), Weight.Regular, LeftMm, bottom + 10, TypeMm, Ink.Black);
        Line(items, X(now), TopMm - 2, X(now), bottom, Ink.SignalRed);
        Text(items, $"now {Label(varied, a, now)}", Weight.Bold, X(now) + 1, TopMm - 1, TypeMm, Ink.SignalRed);
        return new Scene(WidthMm, height, items, []);
    }

    // Steps of 1, 2 or 5 times a power of ten, so that the axis has four to ten figures.
    private static IEnumerable<double> Ticks(double last)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(last)));
        double step = new[] { power / 10, power / 5, power / 2, power }.First(s => last / s <= 10);
        for (int i = 0; i * step <= last; i++)
        {
            yield return i * step;
        }
    }

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

    private static string Label(Varied varied, Assessment a, double fraction) =>
        Figures.Plain(Math.Round(Percent(varied, a, fraction), 2)) + " %";

    // The axis and all figures have one measure: for the load oil on wax, with the extras that are part of the melt.
    private static double Percent(Varied varied, Assessment a, double fraction) =>
        100 * (varied == Varied.Load ? fraction * (1 + Extras(a)) / (1 - fraction) : fraction);

    private static double Fraction(Varied varied, Assessment a, double percent) =>
        varied == Varied.Load ? percent / (100 * (1 + Extras(a)) + percent) : percent / 100;

    private static double Extras(Assessment a) => a.Composition.Recipe.Extras.Sum(e => e.OfWax.Value) / 100;

    private static string Shorten(string text) => text.Length > 46 ? text[..45] + "…" : text;

    private static void Text(List<SceneItem> items, string text, Weight weight, double x, double y, double size, Ink ink) =>
        items.Add(Strokes.Text(text, weight, x, y, size, ink));

    private static void Box(List<SceneItem> items, double x, double y, double width, double height, Ink ink) =>
        items.Add(new PathItem(Strokes.BoxPath(width, height), x, y, 1, ink, null, 0));

    private static void Line(List<SceneItem> items, double x1, double y1, double x2, double y2, Ink ink) =>
        items.Add(Strokes.Line(x1, y1, x2, y2, ink, LineMm));
}
