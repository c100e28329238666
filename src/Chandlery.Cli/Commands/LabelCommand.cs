using System.CommandLine;
using Chandlery.Core.Assessed;
using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Proofs;
using Chandlery.Paper.Scenes;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery label</c>: the label at its exact size.</summary>
internal static class LabelCommand
{
    public static Command Build(PaperList papers)
    {
        var options = new CommonOptions(severalPaths: true);
        var paper = new PaperOptions();
        var command = new Command(
            "label",
            "Print the label at its exact size, with the largest text that fits and never less than the law allows."
        );
        var proof = new Option<bool>("--proof")
        {
            Description = "Also write a proof page: the label at true size with rulers and every legal value, measured from its PDF.",
        };
        command.Add(proof);
        options.AddTo(command);
        paper.AddTo(command);
        command.SetAction(parse =>
            Session.Print(
                parse,
                options,
                paper,
                (session, printer, assessments) =>
                {
                    var run = new PaperRun(session, printer, assessments, new PaperSettings());
                    IReadOnlyList<(Assessment, PaperOutcome)> made = run.MakeAll([.. papers.All.OfType<LabelPaper>()]);
                    if (parse.GetValue(proof))
                    {
                        foreach ((Assessment a, PaperOutcome outcome) in made)
                        {
                            run.Add(outcome is MadeLabel label ? Proof(a, run.PrefixOf(a), label) : []);
                        }
                    }

                    return run.Finish();
                }
            )
        );
        return command;
    }

    private static IEnumerable<PendingFile> Proof(Assessment a, string prefix, MadeLabel label)
    {
        IReadOnlyList<Scene> pages = label.Document.Pages;
        IReadOnlyList<Inspection> checks = LabelInspector.Inspect(label, a);
        return pages.Select(
            (page, i) =>
                new PendingFile(
                    $"{prefix}{a.Id}-proof{(pages.Count > 1 ? $"-{i + 1}" : "")}.pdf",
                    PdfDrawing.Draw(new PaperDocument($"Proof: {a.Candle.Name}", "en", [ProofPage.Draw(a, page, checks)]))
                )
        );
    }
}
