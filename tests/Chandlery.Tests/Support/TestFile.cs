namespace Chandlery.Tests.Support;

/// <summary>Tables that stand beside the tests which read them.</summary>
internal static class TestFile
{
    /// <summary>The lines of a table, without remarks.</summary>
    /// <param name="path">Its path below the folder of the tests.</param>
    public static IEnumerable<string> Lines(string path) =>
        File.ReadLines(Path.Combine(TestLaw.Repository, "tests", "Chandlery.Tests", path)).Where(line => line.Length > 0 && line[0] != '#');
}
