using System.Globalization;

namespace Chandlery.Register;

/// <summary>
/// Checks a register, some entries at a time: a damaged one is named, and the others are checked all the same. Between the stretches
/// others may write.
/// </summary>
/// <param name="store">The open register.</param>
/// <param name="tell">Told what is wrong, in words.</param>
/// <param name="reached">Told up to which entry all are checked; null for nobody.</param>
internal sealed class RegisterCheck(RegisterStore store, Action<string> tell, Action<long>? reached)
{
    private const int AtOnce = 200;
    private readonly HeldDocuments documents = new(store);
    private readonly SearchedTables tables = new(store);
    private SignedEntry before = SignedEntry.Sign(0, "", "", "", "") with { Hash = SignedEntry.FirstPreviousHash };

    /// <summary>Checks all of it.</summary>
    /// <param name="witness">The witness beside the register; null when there is none.</param>
    public void All(Witness? witness)
    {
        if (tables.Gone is { } gone)
        {
            tell($"the table {gone}, which is searched, is gone: 'register rebuild' makes it anew");
        }

        CheckDeclarations();
        foreach (string sha256 in documents.Changed())
        {
            tell($"the document {sha256} was changed");
        }

        CheckEntries(long.MinValue, witness);
    }

    /// <summary>Checks the entries behind one, which is believed.</summary>
    /// <param name="number">Its number; below 1 to check from the first entry on.</param>
    /// <param name="witness">The witness beside the register; null when there is none.</param>
    public void From(long number, Witness? witness)
    {
        if (EntriesBehind(number - 1, 1).FirstOrDefault() is { } first && first.Signed.Number <= number)
        {
            before = first.Signed;
            CheckEntries(number, witness);
        }
        else
        {
            CheckEntries(long.MinValue, witness);
        }
    }

    private List<HeldEntry> EntriesBehind(long number, int count) =>
        store.Rows(HeldEntry.Read, $"SELECT {HeldEntry.Columns} FROM entry WHERE number > @p0 ORDER BY number LIMIT {count}", number);

    private void CheckDeclarations()
    {
        string last = "";
        while (
            store.Rows(
                row => (Sha256: RegisterStore.Text(row, 0), Text: RegisterStore.Text(row, 1)),
                $"SELECT sha256, text FROM declaration WHERE sha256 > @p0 ORDER BY sha256 LIMIT {AtOnce}",
                last
            )
                is { Count: > 0 } texts
        )
        {
            foreach ((string sha256, string text) in texts.Where(t => RegisterFile.Sha256(t.Text) != t.Sha256))
            {
                tell($"the declaration {sha256} was changed");
            }

            last = texts[^1].Sha256;
        }
    }

    private void CheckEntries(long behind, Witness? witness)
    {
        long from = behind;
        while (EntriesBehind(from, AtOnce) is { Count: > 0 } entries)
        {
            long to = entries[^1].Signed.Number;
            CheckStretch(entries, from, to);
            from = to;
            reached?.Invoke(to);
        }

        foreach (string table in tables.There)
        {
            foreach (
                long stray in store.Rows(
                    row => row.GetInt64(0),
                    $"SELECT DISTINCT number FROM {table} WHERE number > @p0 AND NOT EXISTS (SELECT 1 FROM entry WHERE entry.number = {table}.number) ORDER BY number",
                    from
                )
            )
            {
                TellStray(table, stray);
            }
        }

        CheckTexts();
        CheckWitness(witness);
    }

    // A text that is not known there hides the entries that have it from whoever looks for a part of it.
    private void CheckTexts()
    {
        foreach ((string table, string column) in KnownTexts.Columns.Where(c => store.KnowsTexts && tables.There.Contains(c.Table)))
        {
            foreach (
                string text in store.Rows(
                    row => RegisterStore.Text(row, 0),
                    $"""
                    {KnownTexts.Steps(table, column)} SELECT value FROM step WHERE value IS NOT NULL
                    AND NOT EXISTS (SELECT 1 FROM {KnownTexts.Table} WHERE place = @p0 AND {KnownTexts.Table}.value = step.value)
                    """,
                    KnownTexts.PlaceOf(table, column)
                )
            )
            {
                tell($"{KnownTexts.Table} lacks '{text}', which stands in {table}");
            }
        }
    }

    private void CheckStretch(List<HeldEntry> entries, long from, long to)
    {
        IReadOnlyDictionary<string, ILookup<long, string>> searched = tables.Of("number > @p0 AND number <= @p1", from, to);
        HashSet<long> numbers = [.. entries.Select(e => e.Signed.Number)];
        foreach ((string table, ILookup<long, string> rows) in searched)
        {
            foreach (IGrouping<long, string> stray in rows.Where(r => !numbers.Contains(r.Key)))
            {
                TellStray(table, stray.Key);
            }
        }

        List<(HeldEntry Entry, RegisterContent? Content)> read = [.. entries.Select(e => (e, e.Signed.Says()))];
        HashSet<string> held = Held(read.SelectMany(r => r.Content?.Declarations.Select(d => d.Sha256) ?? []).Distinct());
        foreach ((HeldEntry entry, RegisterContent? content) in read)
        {
            CheckChain(entry.Signed);
            if (content is null)
            {
                tell($"entry {entry.Signed.Number} is damaged and cannot be read");
            }
            else
            {
                CheckContent(entry, content, searched, held);
            }
        }
    }

    private HashSet<string> Held(IEnumerable<string> hashes) =>
        [
            .. hashes
                .Chunk(AtOnce)
                .SelectMany(some =>
                    store.Rows(
                        row => RegisterStore.Text(row, 0),
                        $"SELECT sha256 FROM declaration WHERE sha256 IN ({string.Join(", ", some.Select((_, i) => string.Create(CultureInfo.InvariantCulture, $"@p{i}")))})",
                        [.. some]
                    )
                ),
        ];

    private void CheckChain(SignedEntry entry)
    {
        if (entry.Number != before.Number + 1)
        {
            tell(
                entry.Number == before.Number + 2
                    ? $"entry {before.Number + 1} is missing"
                    : $"entries {before.Number + 1} to {entry.Number - 1} are missing"
            );
        }

        if (entry.PreviousHash != before.Hash)
        {
            tell($"entry {entry.Number} does not follow the one before it");
        }

        if (string.CompareOrdinal(entry.At, before.At) < 0)
        {
            tell($"entry {entry.Number} was made at {entry.At}, before the one before it ({before.At})");
        }

        if (!entry.IsWhole)
        {
            tell($"entry {entry.Number} was changed");
        }

        before = entry;
    }

    // What is searched must be what is signed.
    private void CheckContent(
        HeldEntry entry,
        RegisterContent content,
        IReadOnlyDictionary<string, ILookup<long, string>> searched,
        HashSet<string> held
    )
    {
        long number = entry.Signed.Number;
        if (!entry.SaysOf(content))
        {
            tell(
                $"entry {number}: batch or subject is searched as '{entry.Batch}', '{entry.Subject}', and signed as '{content.Batch}', '{content.Subject}'"
            );
        }

        foreach (string table in tables.Differing(searched, number, content))
        {
            tell($"entry {number}: {table} does not say what is signed");
        }

        foreach (UsedDeclaration declaration in content.Declarations.Where(d => !held.Contains(d.Sha256)))
        {
            tell($"entry {number}: the text of {declaration.Path} is missing");
        }

        foreach (IssuedDocument document in content.Documents.Where(d => d.IsKept && !documents.Has(d.Sha256)))
        {
            tell($"entry {number}: the document {document.Name} is missing");
        }
    }

    private void TellStray(string table, long number) => tell($"{table} has rows of an entry {number} that there is not");

    private void CheckWitness(Witness? witness)
    {
        long last = before.Number;
        if (witness is null)
        {
            if (last > 0 && store.IsWitnessOwed)
            {
                tell(
                    "the witness file is missing beside the register: entries cut off the end would not show; 'register add' writes it anew"
                );
            }
        }
        else if (witness.Number > last)
        {
            tell(
                $"entries {last + 1} to {witness.Number} were cut off the end: the witness beside the register names entry {witness.Number}"
            );
        }
        else if (witness.Number > 0 && store.One("SELECT hash FROM entry WHERE number = @p0", witness.Number) as string != witness.Hash)
        {
            tell($"entry {witness.Number} is not the one that the witness beside the register names");
        }
    }
}
