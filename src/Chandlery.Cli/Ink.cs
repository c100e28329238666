using System.Security.Cryptography;

namespace Chandlery.Cli;

/// <summary>
/// Colours for a terminal; nothing for a pipe, a file, a plain terminal, or whoever sets NO_COLOR. Texts carry marks, which only
/// <see cref="HarmlessWriter"/> turns into colours: they hold a word that is drawn anew in each run, so that no name in a file can
/// write one.
/// </summary>
internal sealed class Ink(bool isOn)
{
    private const int Plain = 0;
    private const int Bold = 1;
    private const int Red = 2;
    private const int Yellow = 3;
    private static readonly string[] Sequences = ["\u001b[0m", "\u001b[1m", "\u001b[31m", "\u001b[33m"];

    private static readonly string Drawn = $"\uFDD0{RandomNumberGenerator.GetHexString(16)}";

    /// <summary>How many letters a mark has.</summary>
    public static int MarkLength => Drawn.Length + 1;

    /// <summary>No colours.</summary>
    public static Ink None { get; } = new(false);

    /// <summary>For the standard output.</summary>
    public static Ink Output { get; } = new(IsWanted(Console.IsOutputRedirected, Variable("NO_COLOR"), Variable("TERM")));

    /// <summary>For the error stream.</summary>
    public static Ink Errors { get; } = new(IsWanted(Console.IsErrorRedirected, Variable("NO_COLOR"), Variable("TERM")));

    /// <summary>The sequence of the mark at the beginning of a text; null where there is none.</summary>
    public static string? ColourAt(ReadOnlySpan<char> text) =>
        text.Length >= MarkLength && text.StartsWith(Drawn, StringComparison.Ordinal) ? Sequences[text[Drawn.Length] - '0'] : null;

    /// <summary>Whether colours help: on a terminal that has them, and where nobody has said no.</summary>
    public static bool IsWanted(bool isRedirected, string? noColor, string? terminal) =>
        !isRedirected && string.IsNullOrEmpty(noColor) && terminal is not (null or "" or "dumb");

    /// <summary>A heading.</summary>
    public string Heading(string text) => In(Bold, text);

    /// <summary>What stops a sale or fails.</summary>
    public string Stop(string text) => In(Red, text);

    /// <summary>What is to mind.</summary>
    public string Mind(string text) => In(Yellow, text);

    private string In(int sequence, string text) => isOn ? $"{Drawn}{sequence}{text}{Drawn}{Plain}" : text;

    private static string? Variable(string name) => Environment.GetEnvironmentVariable(name);
}
