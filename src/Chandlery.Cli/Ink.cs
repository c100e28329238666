namespace Chandlery.Cli;

/// <summary>Colours for a terminal; nothing for a pipe, a file, a plain terminal, or whoever sets NO_COLOR.</summary>
internal sealed class Ink(bool isOn)
{
    private const string End = "\u001b[0m";

    /// <summary>The sequences that this class writes: no others reach a terminal.</summary>
    public static IReadOnlyList<string> Sequences { get; } = [End, "\u001b[1m", "\u001b[31m", "\u001b[33m"];

    /// <summary>For the standard output.</summary>
    public static Ink Output { get; } = new(IsWanted(Console.IsOutputRedirected, Variable("NO_COLOR"), Variable("TERM")));

    /// <summary>For the error stream.</summary>
    public static Ink Errors { get; } = new(IsWanted(Console.IsErrorRedirected, Variable("NO_COLOR"), Variable("TERM")));

    /// <summary>Whether colours help: on a terminal that has them, and where nobody has said no.</summary>
    public static bool IsWanted(bool isRedirected, string? noColor, string? terminal) =>
        !isRedirected && string.IsNullOrEmpty(noColor) && terminal is not (null or "" or "dumb");

    /// <summary>A heading.</summary>
    public string Heading(string text) => In(Sequences[1], text);

    /// <summary>What stops a sale or fails.</summary>
    public string Stop(string text) => In(Sequences[2], text);

    /// <summary>What is to mind.</summary>
    public string Mind(string text) => In(Sequences[3], text);

    private string In(string sequence, string text) => isOn ? sequence + text + End : text;

    private static string? Variable(string name) => Environment.GetEnvironmentVariable(name);
}
