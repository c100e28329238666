using System.CommandLine;
using System.Text;
using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Files;
using Chandlery.Paper.Papers;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery dossier</c>: everything for one candle or a whole folder.</summary>
internal static class DossierCommand
{
    private const int PageWidth = 140;

    public static Command Build(PaperList papers)
    {
        var options = new CommonOptions(severalPaths: true);
        var paper = new PaperOptions();
        paper.Formats.DefaultValueFactory = _ => ["pdf", "png", "svg"];
        paper.Formats.Description = "pdf, png and svg (default: all three), with commas.";
        var command = new Command(
            "dossier",
            $"Write everything for one candle or a whole folder: assessment, {PaperList.Called(papers.InDossier)}, a folder for each candle."
        );
        options.AddTo(command);
        paper.AddTo(command);
        command.SetAction(parse =>
            Session.Print(parse, options, paper, (session, printer, assessments) => Write(session, printer, assessments, papers))
        );
        return command;
    }

    private static int Write(Session session, Printer printer, IReadOnlyList<Assessment> assessments, PaperList papers)
    {
        var run = new PaperRun(session, printer, assessments, new PaperSettings());
        run.Expect(papers.InDossier);
        foreach (Assessment a in run.Assessments)
        {
            // A separator at the end makes the names of files a path.
            string folder = Path.Combine(a.Id, run.IsOnlyEdition(a) ? "" : a.Edition.Id, "x")[..^1];
            run.Add([
                new PendingFile(folder + "assessment.json", Encoding.UTF8.GetBytes(AssessmentJson.Write(a))),
                new PendingFile(folder + "assessment.txt", Encoding.UTF8.GetBytes(AssessmentText.Render(a, PageWidth, Ink.None))),
            ]);
            run.MakeForDossier(papers, a, folder);
        }

        int code = run.Finish();
        return assessments.Any(a => a.StopsSale) ? ExitCode.StopsSale : code;
    }
}
