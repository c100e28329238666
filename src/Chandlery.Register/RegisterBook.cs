using System.Data.Common;
using System.Globalization;
using System.Text.Json;

namespace Chandlery.Register;

/// <summary>
/// The register of issued labels, wherever it stands. It is only ever added to, and every entry carries the hash of the one before it,
/// so that a changed or removed entry shows.
/// </summary>
public sealed class RegisterBook : IDisposable
{
    private const int AtOnce = 100;
    private const int MostDoubts = 3;

    private const string UnseenTwins =
        "what is searched in the register is not what is signed in it, so one UFI on two compositions may go unseen: 'chandlery register rebuild' makes the tables anew";

    private static readonly Dictionary<string, byte[]> NoDocuments = [];
    private readonly RegisterStore store;
    private readonly Lazy<string?> sampled;
    private string? belied;

    internal RegisterBook(RegisterStore store)
    {
        this.store = store;
        sampled = new Lazy<string?>(() => store.Guarded(WhatIsWrong));
    }

    /// <summary>The database that it stands in.</summary>
    internal RegisterStore Store => store;

    /// <summary>Where the witness of the last entry is kept; null for nowhere.</summary>
    public string? WitnessFile => store.WitnessFile;

    /// <summary>
    /// Why what is found may be less than all there is, as a sentence; null when nothing speaks against it. Of a table that was emptied
    /// or mangled, entries are found by what is signed instead, which takes longer.
    /// </summary>
    public string? SearchDoubt => sampled.Value ?? belied;

    /// <summary>Adds an entry.</summary>
    /// <param name="content">What it says.</param>
    /// <param name="declarations">Texts of the declarations by hash; kept once however often they are used.</param>
    /// <param name="by">Who issues the documents.</param>
    /// <param name="at">When.</param>
    /// <param name="kept">Bytes of the documents that are kept in the register, by hash; null for none.</param>
    /// <exception cref="IOException">It could not be written; then nothing was, or the message says that this is not known.</exception>
    public RegisterEntry Add(
        RegisterContent content,
        IReadOnlyDictionary<string, string> declarations,
        string by,
        DateTimeOffset at,
        IReadOnlyDictionary<string, byte[]>? kept = null
    )
    {
        RegisterEntry entry = Enter(content, declarations, by, at, kept ?? NoDocuments);
        store.Guarded(WriteWitness);
        return entry;
    }

    /// <summary>
    /// Adds an entry and leaves its witness to the caller: what stands when the program is killed in between must hold together too.
    /// </summary>
    internal RegisterEntry Enter(
        RegisterContent content,
        IReadOnlyDictionary<string, string> declarations,
        string by,
        DateTimeOffset at,
        IReadOnlyDictionary<string, byte[]> kept
    ) =>
        store.Guarded(() =>
        {
            SignedEntry entry = store.Append(() =>
            {
                (long last, string previous, string lastAt) = Last();
                RefuseIfCut(last);
                BeginWitness(last);
                string moment = at.ToUniversalTime().ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture);
                if (string.CompareOrdinal(moment, lastAt) < 0)
                {
                    throw new IOException(
                        $"{store.Name}: this machine's clock says {moment}, and the last entry was made {lastAt}: set the clock right; nothing was written."
                    );
                }

                string json = JsonSerializer.Serialize(content, RegisterJson.Default.RegisterContent);
                SignedEntry signed = SignedEntry.Sign(last + 1, moment, by, json, previous);
                RegisterRows.Write(store, [(signed, content)], declarations, kept);
                return signed;
            });
            return entry.With(content);
        });

    /// <summary>What is odd about an entry before it is made: the same batch again, or its UFI on another composition.</summary>
    public IReadOnlyList<string> Doubts(RegisterContent content) =>
        store.Guarded<IReadOnlyList<string>>(() =>
            [
                .. Twins(content).Take(MostDoubts),
                .. OtherCompositions(content),
                .. SearchDoubt is null ? Array.Empty<string>() : [UnseenTwins],
            ]
        );

    /// <summary>Entries that match, oldest first. A damaged one throws; see <see cref="Stream"/>.</summary>
    public IReadOnlyList<RegisterEntry> Find(RegisterQuery query) =>
        [
            .. Stream(
                query,
                number => throw new IOException($"{store.Name}: entry {number} is damaged; 'register verify' says more."),
                RegisterStretch.All
            ),
        ];

    /// <summary>Entries that match, read some at a time however many there are; nobody who writes is kept waiting.</summary>
    /// <param name="query">What to look for.</param>
    /// <param name="damaged">Told the number of an entry that cannot be read; the others follow.</param>
    /// <param name="stretch">Where to begin, and in which order.</param>
    public IEnumerable<RegisterEntry> Stream(RegisterQuery query, Action<long> damaged, RegisterStretch stretch)
    {
        foreach (long[] numbers in Numbers(query, stretch).Chunk(AtOnce))
        {
            Dictionary<long, SignedEntry> entries = store
                .Guarded(() =>
                    store.Rows(
                        SignedEntry.Read,
                        $"SELECT {SignedEntry.Columns} FROM entry WHERE number IN ({string.Join(", ", numbers.Select(n => n.ToString(CultureInfo.InvariantCulture)))})"
                    )
                )
                .ToDictionary(e => e.Number);
            foreach (long number in numbers)
            {
                if (entries.GetValueOrDefault(number)?.Says() is { } content)
                {
                    if (SignedMatch.Of(content, query))
                    {
                        yield return entries[number].With(content);
                    }
                    else if (sampled.Value is null)
                    {
                        belied ??= $"entry {number} is searched by what is not signed in it";
                    }
                }
                else
                {
                    damaged(number);
                }
            }
        }
    }

    // Where the tables are not to be believed, every entry is looked at.
    private IEnumerable<long> Numbers(RegisterQuery query, RegisterStretch stretch) =>
        new RegisterSearch(store).Numbers(sampled.Value is null ? query : new RegisterQuery(), stretch.From, stretch.LatestFirst);

    private string? WhatIsWrong()
    {
        // The witness first: an entry that is added meanwhile is witnessed after it stands.
        Witness? witness = WitnessNow();
        long last = Last().Number;
        return witness?.Number > last
            ? $"the register ends at entry {last}, and the witness beside it names entry {witness.Number}"
            : new SearchSample(store).Wrong(last);
    }

    /// <summary>
    /// Makes every table and column that is searched anew from what is signed. The chain is not touched; a damaged entry gets no rows.
    /// </summary>
    /// <returns>The numbers of the entries that cannot be read.</returns>
    /// <exception cref="IOException">It could not be written; then nothing was.</exception>
    public IReadOnlyList<long> Rebuild() => store.Guarded(() => store.Append(() => new SearchRebuild(store).All()));

    /// <summary>Number and hash of the last entry; 0 and zeros when there is none.</summary>
    public (long Number, string Hash) Head() => store.Guarded(() => (Last().Number, Last().Hash));

    /// <summary>What <see cref="Verify(Action{string}, Action{long})"/> tells.</summary>
    public IReadOnlyList<string> Verify()
    {
        var wrong = new List<string>();
        Verify(wrong.Add);
        return wrong;
    }

    /// <summary>
    /// Checks every hash, and that every column and table that is searched says what the signed content says. Some entries are held at
    /// a time, and nobody who writes is kept waiting.
    /// </summary>
    /// <param name="tell">Told what is wrong, in words; not called when nothing was changed.</param>
    /// <param name="reached">Told now and then up to which entry all are checked; null for nobody.</param>
    public void Verify(Action<string> tell, Action<long>? reached = null) => Check(check => check.All(WitnessNow()), tell, reached);

    /// <summary>Checks the last entries alone, and that none was cut off behind them.</summary>
    /// <param name="count">How many entries.</param>
    /// <param name="tell">Told what is wrong, in words.</param>
    public void VerifyLatest(int count, Action<string> tell) => Check(check => check.From(Last().Number - count, WitnessNow()), tell);

    /// <summary>Text of a declaration as it was used; null when the register does not hold it.</summary>
    public string? Declaration(string sha256) =>
        store.Guarded(() => store.One("SELECT text FROM declaration WHERE sha256 = @p0", sha256) as string);

    /// <summary>The bytes of a document that is kept, or of a declaration, as they were put in.</summary>
    /// <param name="hash">Their hash, or its beginning.</param>
    /// <exception cref="IOException">There is none of that hash, or several, or it was changed.</exception>
    public byte[] Document(string hash) => store.Guarded(() => new HeldDocuments(store).Find(hash));

    /// <summary>Takes over what another register has beyond this one, letter by letter, so that every hash stays.</summary>
    /// <param name="source">The other one; it is not changed.</param>
    /// <returns>How many entries were taken over.</returns>
    /// <exception cref="IOException">This one is not the beginning of the other, or the other is damaged; then nothing was written.</exception>
    public long TakeOver(RegisterBook source)
    {
        (long last, string hash) = Head();
        if (last > 0 && source.HashAt(last) != hash)
        {
            throw new IOException(
                $"{store.Name}: it holds other entries than {source.store.Name}: carry over into an empty register, or one that was begun from the same entries. Nothing was written."
            );
        }

        if (source.Verify() is { Count: > 0 } wrong)
        {
            throw new IOException(
                $"{source.store.Name}: it does not hold together ({wrong[0]}): 'register verify' says more. Nothing was written."
            );
        }

        store.Guarded(() => store.Append(() => BeginWitness(Last().Number)));
        long carried = store.Guarded(() => source.store.Guarded(() => new RegisterCarrier(source.store, store).CarryFrom(last, hash)));
        store.Guarded(WriteWitness);
        return carried;
    }

    /// <summary>Copies the whole register into a file, consistent even while others write, and puts the copy in place in one step.</summary>
    /// <exception cref="IOException">The copy cannot be written; an older copy of that name is untouched.</exception>
    public void BackUp(string path)
    {
        string temporary = $"{path}.{Guid.NewGuid():N}.tmp";
        try
        {
            Copy(temporary);
            (long Number, string Hash) head;
            using (RegisterBook copy = RegisterFile.OpenToRead(temporary))
            {
                head = copy.Head();
            }

            string witness = Witness.FileOf(path);
            if (Witness.Of(witness) is not { } older || older.Number > head.Number)
            {
                Witness.Begin(witness);
            }

            File.Move(temporary, path, overwrite: true);
            Witness.Write(witness, head);
        }
        finally
        {
            File.Delete(temporary);
            File.Delete(Witness.FileOf(temporary));
        }
    }

    /// <summary>For tests: lets SQLite find the disk full at the file's present size.</summary>
    internal void LimitToPresentSize() => store.Run("PRAGMA max_page_count = 1;");

    /// <inheritdoc/>
    public void Dispose() => store.Dispose();

    private string? HashAt(long number) => store.Guarded(() => store.One("SELECT hash FROM entry WHERE number = @p0", number) as string);

    // SQLite copies its own file; a database is carried over into one.
    private void Copy(string path)
    {
        if (store is SqliteStore file)
        {
            file.CopyTo(path);
            return;
        }

        using RegisterBook copy = RegisterFile.Open(path);
        copy.TakeOver(this);
    }

    private void Check(Action<RegisterCheck> work, Action<string> tell, Action<long>? reached = null) =>
        store.Guarded(() => work(new RegisterCheck(store, tell, reached)));

    private Witness? WitnessNow() => store.WitnessFile is { } file ? Witness.Of(file) : null;

    private (long Number, string Hash, string At) Last() =>
        store
            .Rows(
                row => (row.GetInt64(0), RegisterStore.Text(row, 1), RegisterStore.Text(row, 2)),
                "SELECT number, hash, at FROM entry ORDER BY number DESC LIMIT 1"
            )
            .FirstOrDefault((0, SignedEntry.FirstPreviousHash, ""));

    // An entry behind a tail that is gone would overwrite the witness, and with it the only sign of what was there.
    private void RefuseIfCut(long last)
    {
        if (WitnessNow() is { } witness && witness.Number > last)
        {
            throw new IOException(
                $"{store.Name}: the witness beside the register ({store.WitnessFile}) names entry {witness.Number}, and the register ends at {last}: put it back from a copy. If a new register is meant, put the witness away first. Nothing was written."
            );
        }
    }

    // The first entry of all stands before it is witnessed: from here on a witness that is missing was taken away.
    private void BeginWitness(long last)
    {
        if (last == 0 && store.IsWitnessOwed && store.WitnessFile is { } file && WitnessNow() is null)
        {
            Witness.Begin(file);
        }
    }

    // Under the lock of a writer, so that of two who have just added the later one is witnessed. The entry stands already: a witness
    // that cannot be written lags behind until the next one.
    private void WriteWitness()
    {
        if (store.WitnessFile is not { } file)
        {
            return;
        }

        try
        {
            using DbTransaction transaction = store.BeginAppending();
            Witness.Write(file, (Last().Number, Last().Hash));
            transaction.Rollback();
        }
        catch (Exception error) when (error is IOException or DbException) { }
    }

    // The latest ones: a candle without batch codes is entered under its name again and again.
    private IEnumerable<string> Twins(RegisterContent content)
    {
        var batch = new RegisterQuery(Batch: content.Batch);
        foreach (RegisterEntry twin in Stream(batch, _ => { }, RegisterStretch.Latest))
        {
            if ((twin.Content.Batch, twin.Content.Subject, twin.Content.Edition) == (content.Batch, content.Subject, content.Edition))
            {
                yield return $"batch {content.Batch} stands in entry {twin.Number} already, under the same law";
            }
        }
    }

    // Below and above the own one, so that the index answers however often a UFI was issued.
    private IEnumerable<string> OtherCompositions(RegisterContent content) =>
        SearchedRows.UfiOf(content) is { } issued
            ? store
                .Rows(
                    row => row.GetInt64(0),
                    $"""
                    SELECT number FROM issued_ufi WHERE ufi = @p0 AND composition < @p1
                    UNION SELECT number FROM issued_ufi WHERE ufi = @p0 AND composition > @p1 ORDER BY number LIMIT {MostDoubts}
                    """,
                    issued.Ufi,
                    issued.Composition
                )
                .Select(n =>
                    $"UFI {issued.Ufi} stands in entry {n} with another composition: give this one a formulation number of its own"
                )
            : [];
}
