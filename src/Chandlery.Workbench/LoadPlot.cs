using Chandlery.Core.Asked.Ceilings;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;

namespace Chandlery.Workbench;

/// <summary>Load against consequences, for the page to draw.</summary>
/// <param name="Basis">wax or candle: what the percentages are of.</param>
/// <param name="Now">Where the candle is.</param>
/// <param name="Most">End of the axis.</param>
/// <param name="Lanes">Consequences.</param>
internal sealed record LoadPlot(string Basis, double Now, double Most, IReadOnlyList<PlotLane> Lanes)
{
    /// <summary>The plot; null for a candle without oil.</summary>
    public static LoadPlot? Of(Assessment a, Wax wax)
    {
        if (a.Composition.Recipe.Oils.Count == 0)
        {
            return null;
        }

        bool ofWax = a.Candle.Load is not { Basis: LoadBasis.Candle };
        var finder = new CeilingFinder(a, wax, Varied.Load);
        double Basis(Ceiling c) => ofWax ? c.OfWax.Value : c.OfMelt.Value;
        double now = ofWax ? a.Composition.Recipe.MeltLoadOfWax.Value : a.Composition.Recipe.MeltLoadOfCandle.Value;
        double most = Math.Max(12, Math.Ceiling(now * 1.6));
        List<Ceiling> ceilings = [.. finder.Find().Where(c => Basis(c) < most)];
        var spans = new Dictionary<string, List<double[]>>();
        double from = 0;
        double fraction = 0;
        foreach (Ceiling? c in ceilings.Append(null))
        {
            double to = c is null ? most : Basis(c);
            double next = c?.Fraction ?? fraction + 1e-4;
            foreach (string what in finder.HoldsAt((fraction + next) / 2))
            {
                List<double[]> own = spans.TryGetValue(what, out List<double[]>? known) ? known : spans[what] = [];
                if (own.Count > 0 && Math.Abs(own[^1][1] - from) < 1e-9)
                {
                    own[^1][1] = to;
                }
                else
                {
                    own.Add([from, to]);
                }
            }

            from = to;
            fraction = next;
        }

        return new LoadPlot(
            ofWax ? "wax" : "candle",
            now,
            most,
            [.. spans.Select(s => new PlotLane(s.Key, s.Value)).OrderBy(l => l.Spans[0][0])]
        );
    }
}
