using System.Reflection;

namespace Chandlery.Hostile;

/// <summary>Where the repository lies, as the build wrote it down.</summary>
internal static class Repository
{
    /// <summary>Its root.</summary>
    public static string Root { get; } =
        typeof(Repository).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == "RepositoryFolder").Value!;

    /// <summary>The demo's folder.</summary>
    public static string Demo { get; } = Path.Combine(Root, "data", "demo");

    /// <summary>The folder of suppliers' sheets.</summary>
    public static string Sheets { get; } = Path.Combine(Root, "tests", "Chandlery.Sheets", "pdf");
}
