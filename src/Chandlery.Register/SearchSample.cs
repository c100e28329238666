using System.Globalization;

namespace Chandlery.Register;

/// <summary>
/// Looks at a few entries, from the first to the last, whether the tables that are searched say what is signed: one that was emptied or
/// mangled shows before its answer is believed. 'verify' looks at every entry.
/// </summary>
/// <param name="store">The database.</param>
internal sealed class SearchSample(RegisterStore store)
{
    private const int Entries = 4;

    /// <summary>What is wrong with the tables, as a sentence; null when nothing was seen.</summary>
    /// <param name="last">Number of the last entry.</param>
    public string? Wrong(long last)
    {
        var tables = new SearchedTables(store);
        if (last > 0 && tables.Gone is { } gone)
        {
            return $"the table {gone}, which is searched, is gone";
        }

        string numbers = string.Join(", ", Spread(last).Select(n => n.ToString(CultureInfo.InvariantCulture)));
        List<HeldEntry> entries = store.Rows(
            HeldEntry.Read,
            $"SELECT {HeldEntry.Columns} FROM entry WHERE number IN ({numbers}) ORDER BY number"
        );
        IReadOnlyDictionary<string, ILookup<long, string>> rows = tables.Of($"number IN ({numbers})");
        var said = new List<RegisterContent>();
        foreach (HeldEntry entry in entries)
        {
            if (entry.Signed.Says() is not { } content)
            {
                continue;
            }

            said.Add(content);
            if (Differing(entry, content, tables, rows) is { } table)
            {
                return $"{table}, which is searched, does not say what is signed in entry {entry.Signed.Number}";
            }
        }

        return store.KnowsTexts && Lacks(said) is { } text
            ? $"{KnownTexts.Table}, which is searched, lacks '{text}', which is signed"
            : null;
    }

    private string? Lacks(List<RegisterContent> said) =>
        said.SelectMany(KnownTexts.Of)
            .Distinct()
            .GroupBy(t => t.Place, t => t.Text)
            .Select(place => Lacks(place.Key, [.. place]))
            .FirstOrDefault(t => t is not null);

    private string? Lacks(string place, List<string> texts)
    {
        string named = string.Join(", ", texts.Select((_, i) => string.Create(CultureInfo.InvariantCulture, $"@p{i + 1}")));
        HashSet<string> known =
        [
            .. store.Rows(
                row => RegisterStore.Text(row, 0),
                $"SELECT value FROM {KnownTexts.Table} WHERE place = @p0 AND value IN ({named})",
                [place, .. texts]
            ),
        ];
        return texts.Find(t => !known.Contains(t));
    }

    private static string? Differing(
        HeldEntry entry,
        RegisterContent content,
        SearchedTables tables,
        IReadOnlyDictionary<string, ILookup<long, string>> rows
    ) => entry.SaysOf(content) ? tables.Differing(rows, entry.Signed.Number, content).FirstOrDefault() : "entry";

    private static IEnumerable<long> Spread(long last) =>
        last <= Entries
            ? Enumerable.Range(1, (int)Math.Max(last, 1)).Select(n => (long)n)
            : Enumerable.Range(0, Entries).Select(i => 1 + ((last - 1) * i / (Entries - 1)));
}
