namespace Chandlery.Tests.Support;

/// <summary>A file that somebody has read and found right; what differs from it is written beside it and fails.</summary>
/// <param name="Path">Where it stands.</param>
internal sealed record ApprovedPlace(string Path)
{
    private const string Ending = ".txt";
    private const string Received = ".received" + Ending;

    /// <summary>All approved files of a folder: paths below it, without ending and with forward slashes.</summary>
    public static IEnumerable<string> Names(string folder) =>
        Directory
            .EnumerateFiles(folder, "*" + Ending, SearchOption.AllDirectories)
            .Where(path => !path.EndsWith(Received, StringComparison.Ordinal))
            .Select(path => System.IO.Path.GetRelativePath(folder, path)[..^Ending.Length].Replace('\\', '/'));

    /// <summary>The file of a name that <see cref="Names"/> would give.</summary>
    public static ApprovedPlace Of(string folder, string name) => new(System.IO.Path.Combine(folder, name + Ending));

    /// <summary>Holds what is said now to what was approved.</summary>
    public void Holds(string now)
    {
        string received = Path[..^Ending.Length] + Received;
        if (File.Exists(Path) && File.ReadAllText(Path) == now)
        {
            File.Delete(received);
            return;
        }

        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(received)!);
        File.WriteAllText(received, now);
        Assert.Fail(
            $"What is said has changed. Read the difference between {Path} and {System.IO.Path.GetFileName(received)} "
                + $"beside it; to approve it, move the received file over the approved one: mv {received} {Path}"
        );
    }
}
