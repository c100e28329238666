namespace Chandlery.Tests.Law.Readers;

/// <summary>A list that somebody has read and found right; what differs from it is written beside it and fails.</summary>
internal static class ApprovedList
{
    private const string Received = ".received.txt";

    /// <summary>All approved lists of a folder, without ending, and with forward slashes.</summary>
    public static IEnumerable<string> Names(string folder) =>
        Directory
            .EnumerateFiles(Path.Combine(InventedLaw.Folder, folder), "*.txt", SearchOption.AllDirectories)
            .Where(f => !f.EndsWith(Received, StringComparison.Ordinal))
            .Select(f => Path.GetRelativePath(Path.Combine(InventedLaw.Folder, folder), f)[..^".txt".Length].Replace('\\', '/'));

    /// <summary>Holds a text to the approved one.</summary>
    public static void Holds(string folder, string name, string text)
    {
        string approved = Path.Combine(InventedLaw.Folder, folder, name + ".txt");
        string received = Path.Combine(InventedLaw.Folder, folder, name + Received);
        if (File.Exists(approved) && File.ReadAllText(approved).ReplaceLineEndings("\n") == text)
        {
            File.Delete(received);
            return;
        }

        Directory.CreateDirectory(Path.GetDirectoryName(approved)!);
        File.WriteAllText(received, text);
        Assert.Fail($"Read {received}, and if it is right, move it over {approved}.");
    }
}
