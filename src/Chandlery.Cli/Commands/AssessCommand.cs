using System.CommandLine;
using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery assess</c>: what is in the candle and what follows from it.</summary>
internal static class AssessCommand
{
    private const int NarrowestTable = 60;

    public static Command Build()
    {
        var options = new CommonOptions(severalPaths: true);
        var json = new Option<bool>("--json")
        {
            Description =
                "Print JSON (schema: data/schemas/assessment.schema.json): an object for one candle under one edition of the law, else an array.",
        };
        var command = new Command(
            "assess",
            "Say what is in the finished candle, how it is classified, what its label must say and whether every limit holds."
        );
        options.AddTo(command);
        command.Add(json);
        command.SetAction(parse =>
            Session.Run(
                parse,
                options,
                (session, assessments) =>
                {
                    session.Output.Write(parse.GetValue(json) ? Json(assessments) : Text(assessments));
                    return assessments.Any(a => a.StopsSale) ? ExitCode.StopsSale : ExitCode.Fine;
                }
            )
        );
        return command;
    }

    /// <summary>Width for tables: the terminal's, or a page's where there is none.</summary>
    public static int Width => Console.IsOutputRedirected ? 140 : Math.Max(NarrowestTable, Console.WindowWidth);

    /// <summary>Width for what is wrong: the terminal's, where the error stream is one.</summary>
    public static int ErrorWidth => Math.Max(NarrowestTable, Console.WindowWidth);

    private static string Json(IReadOnlyList<Assessment> assessments) =>
        assessments.Count == 1 ? AssessmentJson.Write(assessments[0]) : AssessmentJson.Write(assessments);

    private static string Text(IReadOnlyList<Assessment> assessments) =>
        string.Join(Environment.NewLine, assessments.Select(a => AssessmentText.Render(a, Width, Ink.Output)));
}
