using System.Diagnostics;

namespace Chandlery.Files;

/// <summary>Recognises words in pictures with the program tesseract, where it is installed.</summary>
public static class Tesseract
{
    private const string Program = "tesseract";
    private const int LongestMilliseconds = 120_000;
    private const string OneBlockOfText = "6";
    private const string English = "eng";

    // Languages of sheets that the intake reads, by tesseract's names.
    private static readonly string[] Languages = [English, "deu", "fra", "spa", "ita", "nld", "pol"];

    /// <summary>True when the program is on the path.</summary>
    public static bool IsInstalled =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(f => File.Exists(Path.Combine(f, Program)));

    /// <summary>The words of the pictures in a file as tab-separated lines; null when nothing was recognised.</summary>
    /// <param name="pictures">The pictures, as TIFF.</param>
    /// <param name="dotsPerInch">Their resolution.</param>
    public static string? Read(byte[] pictures, int dotsPerInch)
    {
        string languages = string.Join('+', Languages.Intersect(Run(["--list-langs"], []).Split('\n', StringSplitOptions.TrimEntries)));
        string[] arguments =
        [
            "stdin",
            "stdout",
            "-l",
            languages.Length == 0 ? English : languages,
            "--psm",
            OneBlockOfText,
            "--dpi",
            FormattableString.Invariant($"{dotsPerInch}"),
            "tsv",
        ];
        return Run(arguments, pictures) is { Length: > 0 } words ? words : null;
    }

    private static string Run(IReadOnlyList<string> arguments, byte[] input)
    {
        var start = new ProcessStartInfo(Program, arguments)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        start.Environment["OMP_THREAD_LIMIT"] = "1";
        using Process process = Process.Start(start) ?? throw new IOException("tesseract could not be started.");
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        Task<string> errors = process.StandardError.ReadToEndAsync();
        try
        {
            using Stream to = process.StandardInput.BaseStream;
            to.Write(input);
        }
        catch (IOException)
        {
            // It gave up before it had read the picture; that it wrote nothing is handled below.
        }

        if (!process.WaitForExit(LongestMilliseconds))
        {
            process.Kill(entireProcessTree: true);
            return "";
        }

        Task.WaitAll(output, errors);
        return process.ExitCode == 0 ? output.Result : "";
    }
}
