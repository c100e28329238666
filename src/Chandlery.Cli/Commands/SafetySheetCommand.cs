using System.CommandLine;
using System.Text.Json;
using Chandlery.Cli.Answers;
using Chandlery.Core.Assessed;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.SafetyDataSheets;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery safety-sheet</c>: the safety data sheet of the finished candle.</summary>
internal static class SafetySheetCommand
{
    public static Command Build(PaperList papers)
    {
        var options = new CommonOptions(severalPaths: true);
        var paper = new PaperOptions();
        var revision = new Option<int>("--revision")
        {
            Description = "Number of the sheet's revision. Default: 1.",
            CustomParser = Numbers.Whole("--revision", 1, 9999),
            DefaultValueFactory = _ => PaperSettings.FirstRevision,
        };
        var command = new Command(
            "safety-sheet",
            "Write the safety data sheet of the finished candle in 16 sections and a page of product information for shops, in each language of the label; says whether a sheet is due."
        );
        options.AddTo(command);
        paper.AddTo(command);
        Option<bool> json = JsonOption.BesidePapers(command.Name);
        command.Add(revision);
        command.Add(json);
        command.SetAction(parse =>
            Session.Print(
                parse,
                options,
                paper,
                (session, printer, all) =>
                {
                    int code = paper.IsWanted(parse)
                        ? Write(session, printer, all, Wanted(parse, papers), parse.GetValue(revision))
                        : ExitCode.Fine;
                    if (code != ExitCode.BadInput)
                    {
                        Say(session, all, parse.GetValue(json));
                    }

                    return code;
                }
            )
        );
        return command;
    }

    // The standard output takes one document: the sheet itself.
    private static IReadOnlyList<PaperKind> Wanted(ParseResult parse, PaperList papers) =>
        StandardOutput.IsMeant(parse) ? [.. papers.All.OfType<SafetySheetPaper>()] : [.. papers.All.OfType<SheetPaper>()];

    private static int Write(
        Session session,
        Printer printer,
        IReadOnlyList<Assessment> assessments,
        IReadOnlyList<PaperKind> papers,
        int revision
    )
    {
        var run = new PaperRun(session, printer, assessments, new PaperSettings(Revision: revision));
        run.MakeAll(papers);
        return run.Finish();
    }

    private static void Say(Session session, IReadOnlyList<Assessment> assessments, bool json)
    {
        List<(Assessment Of, SheetDutyFinding Duty)> duties =
        [
            .. assessments.Select(a => (a, SheetDuties.Find(a.Edition.SafetySheet, a.Classification, a.Substances))),
        ];
        if (json)
        {
            SafetySheetAnswer[] answers = [.. duties.Select(d => SafetySheetAnswer.Of(d.Of, d.Duty))];
            session.Output.WriteLine(JsonSerializer.Serialize(answers, AnswerJson.Plain.SafetySheetAnswerArray));
            return;
        }

        foreach ((Assessment a, SheetDutyFinding duty) in duties)
        {
            session.Output.WriteLine(
                $"{a.Id}, {a.Edition.Id}: {Words(duty.Duty)}{a.Kind.Say(string.Join(' ', duty.Reasons.Select(r => r.Clause.IsNone ? r.Says : $"{r.Says} ({r.Clause})")))}"
            );
        }
    }

    private static string Words(SheetDuty duty) =>
        duty switch
        {
            SheetDuty.WithDelivery => "A safety data sheet is due. ",
            SheetDuty.OnRequest => "A safety data sheet is due on request. ",
            // The reason says so itself.
            _ => "",
        };
}
