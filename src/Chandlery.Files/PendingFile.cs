namespace Chandlery.Files;

/// <summary>A file that is ready to be written.</summary>
public sealed record PendingFile(string Name, byte[] Content)
{
    /// <summary>Files for one folder.</summary>
    /// <exception cref="IOException">Two have one name: the second would take the first one's place.</exception>
    public static IReadOnlyList<PendingFile> Apart(IEnumerable<PendingFile> files)
    {
        List<PendingFile> all = [.. files];
        return all.GroupBy(f => f.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(same => same.Count() > 1) is { } clash
            ? throw new IOException(
                $"Two files would have the name '{clash.Key}', since candles of different folders are called the same: print each folder into an '--out' of its own. Nothing was written."
            )
            : all;
    }

    /// <summary>Writes the file into a folder and says where it lies.</summary>
    public void Write(string folder, TextWriter output) => output.WriteLine(WriteInto(folder));

    /// <summary>Writes the file into a folder.</summary>
    /// <returns>Where it lies.</returns>
    public string WriteInto(string folder)
    {
        string path = Path.Combine(folder, Name);
        AtomicFile.Write(path, Content);
        return path;
    }
}
