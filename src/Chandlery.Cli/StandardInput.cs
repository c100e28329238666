using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli;

/// <summary>A file's text, or what comes in on the standard input where <c>-</c> stands for the file.</summary>
internal static class StandardInput
{
    /// <summary>What is written for the standard input.</summary>
    public const string Sign = "-";

    /// <summary>How messages call a file.</summary>
    public static string NameOf(string file) => file == Sign ? "standard input" : file;

    /// <summary>The text; null with a problem when it cannot be read.</summary>
    public static string? ReadOr(string file, Problems problems) =>
        file == Sign ? TextFile.Read(Console.OpenStandardInput(), NameOf(file), problems) : TextFile.Read(file, file, problems);
}
