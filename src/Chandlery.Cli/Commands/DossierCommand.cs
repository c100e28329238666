using System.CommandLine;
using System.Text;
using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Paper.Papers.Cards;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery dossier</c>: everything for one candle or a whole folder.</summary>
internal static class DossierCommand
{
    private const int PageWidth = 140;

    public static Command Build()
    {
        var options = new CommonOptions();
        var paper = new PaperOptions();
        paper.Formats.DefaultValueFactory = _ => ["pdf", "png", "svg"];
        paper.Formats.Description = "pdf, png and svg (default: all three), with commas.";
        var command = new Command(
            "dossier",
            "Write everything for one candle or a whole folder: assessment, label, burn-safety and shop cards, safety data sheet, product information, facts for the poison centres, a folder for each candle."
        );
        options.AddTo(command);
        paper.AddTo(command);
        command.SetAction(parse => Session.Print(parse, options, paper, Write));
        return command;
    }

    private static int Write(Session session, Printer printer, IReadOnlyList<Assessment> assessments, Problems problems)
    {
        var dossiers = new List<(Assessment Assessment, List<PendingFile> Files)>();
        var reasons = new List<string>();
        foreach (Assessment a in assessments)
        {
            (IReadOnlyList<PendingFile> label, string? whyNot) = printer.Label(a, problems);
            List<PendingFile> files =
            [
                new("assessment.json", Encoding.UTF8.GetBytes(AssessmentJson.Write(a))),
                new("assessment.txt", Encoding.UTF8.GetBytes(AssessmentText.Render(a, PageWidth))),
                .. label,
                .. Enum.GetValues<CardKind>().SelectMany(kind => printer.Card(a, kind, problems)),
                .. printer.PoisonFacts(a, problems),
                .. SafetySheet(session, printer, a),
            ];
            dossiers.Add((a, files));
            reasons.AddRange(whyNot is null ? [] : [whyNot]);
        }

        if (!problems.None)
        {
            return session.Report(problems);
        }

        foreach ((Assessment a, List<PendingFile> files) in dossiers)
        {
            bool alone = assessments.Count(other => other.Id == a.Id) == 1;
            printer.Write(files, alone ? a.Id : Path.Combine(a.Id, a.Edition.Id), session.Output);
        }

        reasons.ForEach(session.Complain);
        return assessments.Any(a => a.StopsSale) || reasons.Count > 0 ? ExitCode.StopsSale : ExitCode.Fine;
    }

    // A sheet that cannot be made yet must not keep the label from being printed.
    private static IReadOnlyList<PendingFile> SafetySheet(Session session, Printer printer, Assessment a)
    {
        if (a.StopsSale)
        {
            return [];
        }

        var problems = new Problems();
        IReadOnlyList<PendingFile> files = printer.SafetySheets(a, session.Lawbook, 1, _ => { }, problems, pdfOnly: true);
        foreach (Problem problem in problems.Found)
        {
            session.Complain($"{a.Id}: no safety data sheet yet. {problem}");
        }

        return problems.None ? files : [];
    }
}
