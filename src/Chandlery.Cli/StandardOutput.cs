using System.CommandLine;
using System.Text;
using Chandlery.Files;

namespace Chandlery.Cli;

/// <summary>The standard output as the place of one document: <c>--out -</c>.</summary>
/// <param name="Text">Where text goes.</param>
/// <param name="IsPiped">Whether bytes go to another program or a file.</param>
internal sealed record StandardOutput(TextWriter Text, bool IsPiped)
{
    /// <summary>What is written for it where a file or folder could be named.</summary>
    public const string Sign = "-";

    private const string OutOption = "--out";
    private const int MostNamed = 3;
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>How messages call a file.</summary>
    public static string NameOf(string file) => file == Sign ? "standard output" : file;

    /// <summary>Whether a command line sends its document there.</summary>
    public static bool IsMeant(ParseResult parse) =>
        parse.CommandResult.Command.Options.OfType<Option<string>>().FirstOrDefault(o => o.Name == OutOption) is { } option
        && parse.GetValue(option) == Sign;

    /// <summary>Writes the one document of a command; nothing where there is none.</summary>
    /// <exception cref="IOException">There are several, or it is none that a terminal can show.</exception>
    public void Write(IEnumerable<PendingFile> files)
    {
        List<PendingFile> first = [.. files.Take(MostNamed + 1)];
        if (first.Count > 1)
        {
            string names = string.Join(", ", first.Take(MostNamed).Select(f => f.Name));
            throw new IOException(
                $"'{OutOption} {Sign}' takes one document, and there are several ({names}{(first.Count > MostNamed ? "..." : "")}): ask for one candle, place and format, or name a folder. Nothing was written."
            );
        }

        first.ForEach(f => Write(f.Content));
    }

    /// <summary>Writes a document.</summary>
    /// <exception cref="IOException">It is none that a terminal can show.</exception>
    public void Write(byte[] content)
    {
        if (IsPiped)
        {
            using Stream bytes = Console.OpenStandardOutput();
            bytes.Write(content);
            return;
        }

        Text.Write(
            Shown(content)
                ?? throw new IOException(
                    $"'{OutOption} {Sign}' would write bytes that no terminal can show: send them to another program or a file ('| program', '> file'), or name a folder."
                )
        );
    }

    private static string? Shown(byte[] content)
    {
        try
        {
            string text = Strict.GetString(content);
            return text.Contains('\0', StringComparison.Ordinal) ? null : text;
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }
}
