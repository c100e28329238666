namespace Chandlery.Register;

/// <summary>Carries entries over from one store into another, letter by letter, so that every hash stays.</summary>
/// <param name="from">The store that has them.</param>
/// <param name="to">The store that takes them.</param>
internal sealed class RegisterCarrier(RegisterStore from, RegisterStore to)
{
    private const int AtOnce = 200;
    private readonly HeldDocuments documents = new(from);

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

    private (long Number, string Hash) Carry(List<SignedEntry> entries, long last, string hash)
    {
        if (to.One("SELECT count(*) FROM entry WHERE number > @p0", last) is not 0L)
        {
            throw new IOException($"{to.Name}: somebody entered something there meanwhile; nothing more was carried over.");
        }

        foreach (SignedEntry entry in entries)
        {
            Carry(entry, last, hash);
            (last, hash) = (entry.Number, entry.Hash);
        }

        return (last, hash);
    }

    private void Carry(SignedEntry entry, long last, string hash)
    {
        if (entry.Number != last + 1 || entry.PreviousHash != hash || !entry.IsWhole || entry.Says() is not { } content)
        {
            throw new IOException(
                $"{from.Name}: entry {entry.Number} is damaged or does not follow entry {last}: 'register verify' says more."
            );
        }

        var texts = new Dictionary<string, string>();
        foreach (UsedDeclaration declaration in content.Declarations)
        {
            texts[declaration.Sha256] =
                from.One("SELECT text FROM declaration WHERE sha256 = @p0", declaration.Sha256) as string
                ?? throw new IOException($"{from.Name}: entry {entry.Number}: the text of {declaration.Path} is missing.");
        }

        var kept = new Dictionary<string, byte[]>();
        foreach (IssuedDocument document in content.Documents.Where(d => d.IsKept))
        {
            kept[document.Sha256] =
                documents.Bytes(document.Sha256)
                ?? throw new IOException($"{from.Name}: entry {entry.Number}: the document {document.Name} is missing.");
        }

        RegisterRows.Write(to, entry, content, texts, kept);
    }
}
