namespace Chandlery.Register;

/// <summary>Carries entries over from one store into another, letter by letter, so that every hash stays.</summary>
/// <param name="from">The store that has them.</param>
/// <param name="to">The store that takes them.</param>
internal sealed class RegisterCarrier(RegisterStore from, RegisterStore to)
{
    private const int AtOnce = 200;
    private readonly HeldDocuments documents = new(from);
    private readonly HashSet<string> carriedHashes = [];

    /// <summary>Carries over what stands behind an entry, some at a time: after a failure the next run goes on where it ended.</summary>
    /// <param name="last">Number of the entry.</param>
    /// <param name="hash">Its hash.</param>
    /// <returns>How many were carried over.</returns>
    public long CarryFrom(long last, string hash)
    {
        long carried = 0;
        while (
            from.Rows(SignedEntry.Read, $"SELECT {SignedEntry.Columns} FROM entry WHERE number > @p0 ORDER BY number LIMIT {AtOnce}", last)
                is { Count: > 0 } entries
        )
        {
            (last, hash) = to.Append(() => Carry(entries, last, hash));
            carried += entries.Count;
        }

        return carried;
    }

    // A stretch goes over in one transaction, and each text or document once however many entries rest on it.
    private (long Number, string Hash) Carry(List<SignedEntry> entries, long last, string hash)
    {
        if (to.One("SELECT count(*) FROM entry WHERE number > @p0", last) is not 0L)
        {
            throw new IOException($"{to.Name}: somebody entered something there meanwhile; nothing more was carried over.");
        }

        var read = new List<(SignedEntry, RegisterContent)>();
        var texts = new Dictionary<string, string>();
        var kept = new Dictionary<string, byte[]>();
        foreach (SignedEntry entry in entries)
        {
            if (entry.Number != last + 1 || entry.PreviousHash != hash || !entry.IsWhole || entry.Says() is not { } content)
            {
                throw new IOException(
                    $"{from.Name}: entry {entry.Number} is damaged or does not follow entry {last}: 'register verify' says more."
                );
            }

            read.Add((entry, content));
            TakeTexts(entry, content, texts, kept);
            (last, hash) = (entry.Number, entry.Hash);
        }

        RegisterRows.Write(to, read, texts, kept);
        carriedHashes.UnionWith(texts.Keys);
        carriedHashes.UnionWith(kept.Keys);
        return (last, hash);
    }

    private void TakeTexts(SignedEntry entry, RegisterContent content, Dictionary<string, string> texts, Dictionary<string, byte[]> kept)
    {
        foreach (UsedDeclaration declaration in content.Declarations.Where(d => IsNew(d.Sha256) && !texts.ContainsKey(d.Sha256)))
        {
            texts[declaration.Sha256] =
                from.One("SELECT text FROM declaration WHERE sha256 = @p0", declaration.Sha256) as string
                ?? throw new IOException($"{from.Name}: entry {entry.Number}: the text of {declaration.Path} is missing.");
        }

        foreach (IssuedDocument document in content.Documents.Where(d => d.IsKept && IsNew(d.Sha256) && !kept.ContainsKey(d.Sha256)))
        {
            kept[document.Sha256] =
                documents.Bytes(document.Sha256)
                ?? throw new IOException($"{from.Name}: entry {entry.Number}: the document {document.Name} is missing.");
        }
    }

    private bool IsNew(string sha256) => !carriedHashes.Contains(sha256);
}
