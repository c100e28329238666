using Chandlery.Core.Declared;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>
/// Reads the substances of the trade: a table with tabs, because hundreds of rows of it are read whenever a candle is assessed.
/// </summary>
internal static class KnownReader
{
    private const string Head = "cas\tec\tnames\tkind\tallergen";

    public static IReadOnlyList<KnownSubstance> Read(string file, string text, Problems problems)
    {
        var known = new List<KnownSubstance>();
        string[] lines = text.ReplaceLineEndings("\n").Split('\n');
        if (lines[0] != Head)
        {
            problems.Add(
                new TextPlace(file, 1, 1),
                "The table has another head than it must have.",
                $"Write {Head.Replace("\t", ", ", StringComparison.Ordinal)}, with a tab between them."
            );
        }

        for (int i = 1; i < lines.Length; i++)
        {
            string[] cells = lines[i].Split('\t');
            var place = new TextPlace(file, i + 1, 1);
            if (lines[i].Length == 0)
            {
                continue;
            }

            if (cells.Length != Head.Split('\t').Length)
            {
                problems.Add(place, $"The line has {cells.Length} cells.", $"Write as many as the head: {Head.Split('\t').Length}.");
                continue;
            }

            if (CasNumber.Parse(cells[0]) is { Success: false } cas)
            {
                problems.Add(place, cas.Reason);
            }

            if (cells[1].Length > 0 && EcNumber.Parse(cells[1]) is { Success: false } ec)
            {
                problems.Add(place, ec.Reason);
            }

            string[] rows = cells[4].Split("; ", StringSplitOptions.RemoveEmptyEntries);
            known.Add(
                new KnownSubstance(cells[0], OrNull(cells[1]), cells[2].Split("; "), OrNull(cells[3]), rows.Length == 1 ? rows[0] : null)
                {
                    AllergenRows = rows,
                }
            );
        }

        Dictionary<string, int> allergens = known.SelectMany(k => k.AllergenRows).GroupBy(n => n).ToDictionary(g => g.Key, g => g.Count());
        return [.. known.Select(k => k with { SharesAllergenName = k.AllergenName is { } name && allergens[name] > 1 })];
    }

    private static string? OrNull(string cell) => cell.Length == 0 ? null : cell;
}
