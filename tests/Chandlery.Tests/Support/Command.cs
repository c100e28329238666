using System.CommandLine;
using System.Diagnostics;
using Chandlery.Cli;

namespace Chandlery.Tests.Support;

/// <summary>
/// Runs commands as users give them. The environment variable CHANDLERY_PROGRAM names the program to run them with, such as the one
/// that is published; without it they run in this process or with the framework's build.
/// </summary>
internal static class Command
{
    /// <summary>The program named from outside; null for none.</summary>
    public static string? Published { get; } = Environment.GetEnvironmentVariable("CHANDLERY_PROGRAM");

    /// <summary>Runs a command with the program named, or else in this process.</summary>
    public static (int Code, string Output, string Errors) Run(params string[] arguments) =>
        Published is null ? RunHere(arguments) : RunIn("", arguments);

    /// <summary>Runs a command in this process.</summary>
    public static (int Code, string Output, string Errors) RunHere(params string[] arguments)
    {
        var output = new StringWriter();
        var errors = new StringWriter();
        ParseResult parse = CommandTree.Build().Parse(arguments);
        parse.InvocationConfiguration.Output = output;
        parse.InvocationConfiguration.Error = errors;
        return (UsageErrors.RunOrSay(parse), output.ToString(), errors.ToString());
    }

    /// <summary>Runs a command in a process of its own.</summary>
    /// <param name="folder">Working folder; empty for this process's.</param>
    /// <param name="arguments">The command.</param>
    public static (int Code, string Output, string Errors) RunIn(string folder, params string[] arguments)
    {
        using Process process = Start(folder, arguments);
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, errors.Result);
    }

    /// <summary>Starts a command in a process of its own.</summary>
    public static Process Start(string folder, params string[] arguments)
    {
        return Process.Start(
            new ProcessStartInfo(Program[0], [.. Program.Skip(1), .. arguments])
            {
                WorkingDirectory = folder,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            }
        )!;
    }

    /// <summary>The program with what stands before its arguments.</summary>
    public static IReadOnlyList<string> Program { get; } =
        Published is null ? ["dotnet", Path.Combine(AppContext.BaseDirectory, "chandlery.dll")] : [Published];
}
