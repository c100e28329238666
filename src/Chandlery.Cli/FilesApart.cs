using Chandlery.Files;

namespace Chandlery.Cli;

/// <summary>Files that go into one folder.</summary>
internal static class FilesApart
{
    /// <summary>The files, each with a name of its own.</summary>
    /// <exception cref="IOException">Two have one name: the second would take the first one's place.</exception>
    public static IReadOnlyList<PendingFile> Of(IEnumerable<PendingFile> files)
    {
        List<PendingFile> all = [.. files];
        return all.GroupBy(f => f.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(same => same.Count() > 1) is { } clash
            ? throw new IOException(
                $"Two files would have the name '{clash.Key}', since candles of different folders are called the same: print each folder into an '--out' of its own. Nothing was written."
            )
            : all;
    }
}
