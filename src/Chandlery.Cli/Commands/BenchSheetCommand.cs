using System.CommandLine;
using System.Text.Json;
using Chandlery.Core.Assessed;
using Chandlery.Core.Making;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.BenchSheets;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery bench-sheet</c>: what to weigh for a number of candles.</summary>
internal static class BenchSheetCommand
{
    public static Command Build(PaperList papers)
    {
        var options = new CommonOptions(severalPaths: true);
        var paper = new PaperOptions();
        var count = new Option<int>("--count")
        {
            Description = "How many candles. Default: 1.",
            CustomParser = Numbers.Whole("--count", 1, PouringPlan.MostCandles),
            DefaultValueFactory = _ => 1,
        };
        var waste = new Option<double>("--waste")
        {
            Description = $"Allowance for what stays in the jug, percent (0 to 50). Default: {PaperSettings.UsualWastePercent}.",
            CustomParser = Numbers.Decimal("--waste", 0, 50),
            DefaultValueFactory = _ => PaperSettings.UsualWastePercent,
        };
        var pour = new PourOptions();
        var command = new Command(
            "bench-sheet",
            "What to weigh for a number of candles, temperatures beside the flash points, wicks and filling, with room to write down what was weighed."
        );
        options.AddTo(command);
        paper.AddTo(command);
        command.Add(count);
        Option<bool> json = JsonOption.BesidePapers(command.Name);
        command.Add(waste);
        command.Add(json);
        pour.AddTo(command);
        command.SetAction(parse =>
            Session.Print(
                parse,
                options,
                paper,
                (session, printer, assessments) =>
                {
                    var settings = new PaperSettings(parse.GetValue(count), parse.GetValue(waste)) { Pour = pour.Read(parse) };
                    if (parse.GetValue(json) && !Answer(session, printer, assessments, settings))
                    {
                        return ExitCode.BadInput;
                    }

                    if (!paper.IsWanted(parse))
                    {
                        return assessments.Any(a => a.StopsSale) ? ExitCode.StopsSale : ExitCode.Fine;
                    }

                    var run = new PaperRun(session, printer, assessments, settings);
                    run.MakeAll([.. papers.All.OfType<BenchSheetPaper>()]);
                    int code = run.Finish();
                    return code == ExitCode.Fine && assessments.Any(a => a.StopsSale) ? ExitCode.StopsSale : code;
                }
            )
        );
        return command;
    }

    private static bool Answer(Session session, Printer printer, IReadOnlyList<Assessment> assessments, PaperSettings settings)
    {
        var problems = new Problems();
        BenchLine[] lines =
        [
            .. session
                .EachDeclared(assessments)
                .Select(a => BenchSheetPaper.Line(session.Request(a, a.Languages[0], printer.Shop, settings), problems))
                .OfType<BenchLine>(),
        ];
        if (!problems.None)
        {
            session.Report(problems.Found);
            return false;
        }

        session.Output.WriteLine(JsonSerializer.Serialize(lines, MakingJson.Plain.BenchLineArray));
        return true;
    }
}
