namespace Chandlery.Tests.Support;

/// <summary>A test that asks other programs; skipped, and said so, where one of them is not installed.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class NeedsToolFactAttribute : FactAttribute
{
    public NeedsToolFactAttribute(params string[] tools)
    {
        string[] missing = [.. tools.Where(t => !IsThere(t))];
        Skip = missing.Length > 0 ? $"not installed: {string.Join(", ", missing)}" : null;
    }

    // A tool is a program's name, or the path of a file that a package brings.
    private static bool IsThere(string tool) =>
        tool.StartsWith('/')
            ? File.Exists(tool)
            : (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(f => File.Exists(Path.Combine(f, tool)));
}
