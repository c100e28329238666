using Chandlery.Core.Asked.Ceilings;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;

namespace Chandlery.Workbench.Desks;

/// <summary>What holds along the load, for the page to draw.</summary>
/// <param name="Basis">wax or candle: what the percentages are of.</param>
/// <param name="Now">Where the candle is.</param>
/// <param name="Most">End of the line.</param>
/// <param name="Zones">Stretches of the line, lowest first, each up to the next.</param>
internal sealed record LoadLine(string Basis, double Now, double Most, IReadOnlyList<LoadZone> Zones)
{
    private const double ShortestLine = 12;
    private const double RoomBeyondNow = 1.6;

    /// <summary>The line; null for a candle without oil.</summary>
    public static LoadLine? Of(Assessment a, Wax wax)
    {
        if (a.Composition.Recipe.Oils.Count == 0)
        {
            return null;
        }

        bool ofWax = a.Candle.Load is not { Basis: LoadBasis.Candle };
        var finder = new CeilingFinder(a, wax, Varied.Load);
        double Basis(Ceiling c) => ofWax ? c.OfWax.Value : c.OfMelt.Value;
        double now = ofWax ? a.Composition.Recipe.MeltLoadOfWax.Value : a.Composition.Recipe.MeltLoadOfCandle.Value;
        double most = Math.Max(ShortestLine, Math.Ceiling(now * RoomBeyondNow));
        var stretches = new List<(double From, double To, IReadOnlyDictionary<string, ConsequenceKind> Holds)>();
        double from = 0;
        double fraction = 0;
        foreach (Ceiling? c in finder.Find().Where(c => Basis(c) < most).Append(null))
        {
            double next = c?.Fraction ?? fraction + 1e-4;
            double to = c is null ? most : Basis(c);
            stretches.Add((from, to, finder.KindsAt((fraction + next) / 2)));
            from = to;
            fraction = next;
        }

        // What is broken at every load is not mended by another load: the line tells of the load alone.
        List<string> always =
        [
            .. stretches[0]
                .Holds.Where(h => h.Value == ConsequenceKind.BrokenLimit && stretches.All(s => s.Holds.ContainsKey(h.Key)))
                .Select(h => h.Key),
        ];
        return new LoadLine(
            ofWax ? "wax" : "candle",
            now,
            most,
            [.. stretches.Select(s => LoadZone.Of(s.From, s.To, s.Holds.Where(h => !always.Contains(h.Key)).ToDictionary()))]
        );
    }
}
