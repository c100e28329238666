using System.CommandLine;
using Chandlery.Core.Assessed;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Procedures;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery procedure</c>: how a maker looks after the safety of products.</summary>
internal static class ProcedureCommand
{
    public static Command Build(PaperList papers)
    {
        var options = new CommonOptions(severalPaths: true);
        var paper = new PaperOptions();
        var command = new Command(
            "procedure",
            "Print on one page how the maker looks after product safety: what is done, what the declarations show of it, by which clauses; who does it is written in by hand. In the languages of a product, by the law of its places."
        );
        options.AddTo(command);
        paper.AddTo(command);
        command.SetAction(parse =>
            Session.Print(
                parse,
                options,
                paper,
                (session, printer, assessments) =>
                {
                    var run = new PaperRun(session, printer, FirstOfEachLaw(session, assessments), new PaperSettings());
                    run.MakeAll([.. papers.All.OfType<ProcedurePaper>()]);
                    return run.Finish();
                }
            )
        );
        return command;
    }

    // The page is the maker's: a second product under the same law would give it once more.
    private static List<Assessment> FirstOfEachLaw(Session session, IReadOnlyList<Assessment> assessments) =>
        [.. assessments.DistinctBy(a => (session.FolderOf(a).Root, a.Edition.Id))];
}
