using System.CommandLine;
using Chandlery.Core.Assessed;
using Chandlery.Core.Making;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery bench-sheet</c>: what to weigh for a number of candles.</summary>
internal static class BenchSheetCommand
{
    public static Command Build()
    {
        var options = new CommonOptions();
        var paper = new PaperOptions();
        var count = new Option<int>("--count") { Description = "How many candles. Default: 1.", DefaultValueFactory = _ => 1 };
        var waste = new Option<double>("--waste")
        {
            Description = "Allowance for what stays in the jug, percent (0 to 50). Default: 3.",
            DefaultValueFactory = _ => 3,
        };
        count.Validators.Add(r =>
        {
            if (r.GetValueOrDefault<int>() is < 1 or > PouringPlan.MostCandles)
            {
                r.AddError($"--count must be between 1 and {PouringPlan.MostCandles}.");
            }
        });
        waste.Validators.Add(r =>
        {
            if (!(r.GetValueOrDefault<double>() is >= 0 and <= 50))
            {
                r.AddError("--waste must be between 0 and 50.");
            }
        });
        var command = new Command(
            "bench-sheet",
            "What to weigh for a number of candles, temperatures beside the flash points, wicks and filling, with room to write down what was weighed."
        );
        options.AddTo(command);
        paper.AddTo(command);
        command.Add(count);
        command.Add(waste);
        command.SetAction(parse =>
            Session.Print(
                parse,
                options,
                paper,
                (session, printer, all, problems) => Write(session, printer, all, parse.GetValue(count), parse.GetValue(waste), problems)
            )
        );
        return command;
    }

    private static int Write(
        Session session,
        Printer printer,
        IReadOnlyList<Assessment> assessments,
        int count,
        double waste,
        Problems problems
    )
    {
        var files = new List<PendingFile>();
        foreach (Assessment a in assessments.DistinctBy(a => a.Id))
        {
            files.AddRange(printer.BenchSheet(a, PouringPlan.Make(a, session.WaxOf(a), count, waste), problems));
        }

        if (!problems.None)
        {
            return session.Report(problems);
        }

        printer.Write(files, "", session.Output);
        return assessments.Any(a => a.StopsSale) ? ExitCode.StopsSale : ExitCode.Fine;
    }
}
