using System.CommandLine;
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
        command.Add(revision);
        command.SetAction(parse =>
            Session.Print(
                parse,
                options,
                paper,
                (session, printer, all) => Write(session, printer, all, Wanted(parse, papers), parse.GetValue(revision))
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
        int code = run.Finish();
        if (code == ExitCode.BadInput)
        {
            return code;
        }

        foreach (Assessment a in assessments)
        {
            SheetDutyFinding duty = SheetDuties.Find(a.Edition.SafetySheet, a.Classification, a.Substances);
            session.Output.WriteLine(
                $"{a.Id}, {a.Edition.Id}: {Words(duty.Duty)}{a.Kind.Say(string.Join(' ', duty.Reasons.Select(r => r.Clause.IsNone ? r.Says : $"{r.Says} ({r.Clause})")))}"
            );
        }

        return code;
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
