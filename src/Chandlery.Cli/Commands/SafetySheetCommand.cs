using System.CommandLine;
using Chandlery.Core.Assessed;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery safety-sheet</c>: the safety data sheet of the finished candle.</summary>
internal static class SafetySheetCommand
{
    public static Command Build()
    {
        var options = new CommonOptions();
        var paper = new PaperOptions();
        var revision = new Option<int>("--revision")
        {
            Description = "Number of the sheet's revision. Default: 1.",
            DefaultValueFactory = _ => 1,
        };
        revision.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 1 or > 9999)
            {
                result.AddError("--revision must be between 1 and 9999.");
            }
        });
        var command = new Command(
            "safety-sheet",
            "Write the safety data sheet of the finished candle in 16 sections and a page of product information for shops, in each language of the label; says whether a sheet is due."
        );
        options.AddTo(command);
        paper.AddTo(command);
        command.Add(revision);
        command.SetAction(parse =>
            Session.Print(
                parse,
                options,
                paper,
                (session, printer, all, problems) => Write(session, printer, all, parse.GetValue(revision), problems)
            )
        );
        return command;
    }

    private static int Write(Session session, Printer printer, IReadOnlyList<Assessment> assessments, int revision, Problems problems)
    {
        var files = new List<PendingFile>();
        foreach (Assessment a in assessments)
        {
            if (a.StopsSale)
            {
                session.Complain($"{a.Id}: no safety data sheet, because something stops the sale (see 'assess').");
                continue;
            }

            files.AddRange(
                printer
                    .SafetySheets(a, session.Lawbook, revision, session.Complain, problems)
                    .Select(f => assessments.Count(o => o.Id == a.Id) == 1 ? f : f with { Name = $"{a.Edition.Id}-{f.Name}" })
            );
        }

        if (!problems.None)
        {
            return session.Report(problems);
        }

        printer.Write(files, "", session.Output);
        foreach (Assessment a in assessments)
        {
            SheetDutyFinding duty = SheetDuties.Find(a.Edition.SafetySheet, a.Classification, a.Substances);
            session.Output.WriteLine(
                $"{a.Id}, {a.Edition.Id}: {Words(duty.Duty)} {string.Join(' ', duty.Reasons.Select(r => r.Clause.IsNone ? r.Says : $"{r.Says} ({r.Clause})"))}"
            );
        }

        return assessments.Any(a => a.StopsSale) ? ExitCode.StopsSale : ExitCode.Fine;
    }

    private static string Words(SheetDuty duty) =>
        duty switch
        {
            SheetDuty.WithDelivery => "A safety data sheet is due.",
            SheetDuty.OnRequest => "A safety data sheet is due on request.",
            _ => "No safety data sheet is due.",
        };
}
