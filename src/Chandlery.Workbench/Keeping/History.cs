using System.Text.Json;
using Chandlery.Files;
using Chandlery.Register;
using Chandlery.Workbench.Answers;

namespace Chandlery.Workbench.Keeping;

/// <summary>
/// Every change that the page makes to the maker's files, and how to take it back. It lies in a hidden folder beside them: a list of
/// changes that only grows, and each text once under its hash. A text that was changed by another program is never overwritten.
/// </summary>
internal sealed class History(string root)
{
    private const string Folder = ".history";
    private const string TextFolder = "texts";
    private const string List = "changes.jsonl";

    private string ListFile => Path.Combine(root, Folder, List);

    /// <summary>All changes, the oldest first.</summary>
    /// <exception cref="IOException">The list cannot be read.</exception>
    public IReadOnlyList<KeptChange> All() => File.Exists(ListFile) ? [.. File.ReadLines(ListFile).Select(Read).OfType<KeptChange>()] : [];

    // A line that a killed program left half written is the last one; what it tells of stands in the files.
    private static KeptChange? Read(string line)
    {
        try
        {
            return JsonSerializer.Deserialize(line, PageJson.Default.KeptChange);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>A text that was kept; null when there is none of that hash.</summary>
    public string? Text(string hash) =>
        hash.Length == 64 && hash.All(char.IsAsciiHexDigitLower) && File.Exists(TextFileOf(hash))
            ? File.ReadAllText(TextFileOf(hash))
            : null;

    /// <summary>Hashes of all texts that were kept.</summary>
    public IEnumerable<string> Hashes() =>
        Directory.Exists(Path.Combine(root, Folder, TextFolder))
            ? Directory.EnumerateFiles(Path.Combine(root, Folder, TextFolder)).Select(f => Path.GetFileName(f)!)
            : [];

    /// <summary>Writes files and remembers what they were.</summary>
    /// <exception cref="IOException">A file is no longer what it was, or cannot be written.</exception>
    public KeptChange Keep(string what, IReadOnlyList<FileText> texts) => Write(what, texts, null, null);

    /// <summary>What would be taken back and done again next.</summary>
    public NextSteps Next()
    {
        (List<KeptChange> done, List<KeptChange> undone) = Stacks();
        return new NextSteps(done.LastOrDefault(), undone.LastOrDefault());
    }

    /// <summary>Takes the last change back.</summary>
    /// <exception cref="IOException">A file was changed since by another program.</exception>
    public KeptChange? Undo() =>
        Next().Undo is { } last
            ? Write(last.What, [.. last.Files.Select(f => new FileText(f.File, TextOf(f.After), TextOf(f.Before)))], last.Number, null)
            : null;

    /// <summary>Does the change again that was taken back last.</summary>
    /// <exception cref="IOException">A file was changed since by another program.</exception>
    public KeptChange? Redo() =>
        Next().Redo is { } last
            ? Write(last.What, [.. last.Files.Select(f => new FileText(f.File, TextOf(f.Before), TextOf(f.After)))], null, last.Number)
            : null;

    /// <summary>What a file held at each time, the latest first; what it held under the names that it had before is among it.</summary>
    public IReadOnlyList<KeptText> Of(string file)
    {
        var texts = new List<KeptText>();
        string name = file;
        foreach (KeptChange change in All().Reverse())
        {
            if (change.Files.FirstOrDefault(f => f.File == name) is { } own)
            {
                texts.Add(new KeptText(change.At, WordsOf(change), own.After));
                name = change.To == name ? change.From! : name;
            }
        }

        return texts;
    }

    /// <summary>The files that were put away and did not come back.</summary>
    public IReadOnlyList<PutAwayFile> PutAway() =>
        [
            .. All()
                .SelectMany(c => c.Files.Select(f => (Change: c, File: f)))
                .GroupBy(f => f.File.File)
                .Select(own => own.Last())
                .Where(last =>
                    last.File is { After: null, Before: not null }
                    && last.Change.From != last.File.File
                    && !File.Exists(Path.Combine(root, last.File.File))
                )
                .Select(last => new PutAwayFile(last.File.File, last.File.Before!, last.Change.At)),
        ];

    private static string WordsOf(KeptChange c) =>
        c.Undoes is not null ? $"taken back: {c.What}"
        : c.Redoes is not null ? $"again: {c.What}"
        : c.What;

    private (List<KeptChange> Done, List<KeptChange> Undone) Stacks()
    {
        List<KeptChange> done = [];
        List<KeptChange> undone = [];
        foreach (KeptChange change in All())
        {
            if (change.Undoes is not null && done.Count > 0)
            {
                undone.Add(done[^1]);
                done.RemoveAt(done.Count - 1);
            }
            else if (change.Redoes is not null && undone.Count > 0)
            {
                done.Add(undone[^1]);
                undone.RemoveAt(undone.Count - 1);
            }
            else
            {
                done.Add(change);
                undone.Clear();
            }
        }

        return (done, undone);
    }

    private string? TextOf(string? hash) =>
        hash is null ? null : Text(hash) ?? throw new IOException("A text of the history is missing, so nothing was changed.");

    private KeptChange Write(string what, IReadOnlyList<FileText> texts, int? undoes, int? redoes)
    {
        foreach (FileText text in texts)
        {
            string path = Path.Combine(root, text.File);
            string? onDisk = File.Exists(path) ? File.ReadAllText(path) : null;
            if (onDisk != text.Before)
            {
                throw new IOException($"{text.File} was changed by somebody else since, so nothing was changed.");
            }
        }

        foreach (string text in texts.SelectMany(t => new[] { t.Before, t.After }).OfType<string>())
        {
            if (!File.Exists(TextFileOf(RegisterFile.Sha256(text))))
            {
                AtomicFile.Write(TextFileOf(RegisterFile.Sha256(text)), text);
            }
        }

        var written = new List<FileText>();
        try
        {
            foreach (FileText text in texts)
            {
                written.Add(text);
                Put(text.File, text.After);
            }
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            written.ForEach(text => Put(text.File, text.Before));
            throw;
        }

        var change = new KeptChange(All().Count + 1, DateTimeOffset.UtcNow, what, [.. texts.Select(Hashed)], undoes, redoes);
        File.AppendAllText(ListFile, JsonSerializer.Serialize(change, PageJson.Default.KeptChange) + "\n");
        return change;
    }

    private void Put(string file, string? text)
    {
        string path = Path.Combine(root, file);
        if (text is not null)
        {
            AtomicFile.Write(path, text);
        }
        else
        {
            File.Delete(path);
        }
    }

    private static FileChange Hashed(FileText text) =>
        new(
            text.File,
            text.Before is { } before ? RegisterFile.Sha256(before) : null,
            text.After is { } after ? RegisterFile.Sha256(after) : null
        );

    private string TextFileOf(string hash) => Path.Combine(root, Folder, TextFolder, hash);
}
