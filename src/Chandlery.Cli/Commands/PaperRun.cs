using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Files;
using Chandlery.Paper.Papers;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary>
/// Makes papers of some candles. Every paper stands alone: those that can be made are written, and each that is missing is said
/// with its reason.
/// </summary>
internal sealed class PaperRun(Session session, Printer printer, IReadOnlyList<Assessment> assessments, PaperSettings settings)
{
    private readonly List<PendingFile> files = [];
    private readonly List<string> remarks = [];
    private readonly HashSet<(Assessment, Language, string)> warned = [];
    private readonly Problems problems = new();
    private bool lacksDuePaper;
    private int expected;
    private int drawn;

    /// <summary>The candles.</summary>
    public IReadOnlyList<Assessment> Assessments => assessments;

    /// <summary>Makes papers of all candles, one file beside the other.</summary>
    /// <returns>What came of each.</returns>
    public IReadOnlyList<(Assessment Assessment, PaperOutcome Outcome)> MakeAll(IReadOnlyList<PaperKind> papers)
    {
        var outcomes = new List<(Assessment, PaperOutcome)>();
        Expect(papers);
        foreach (Assessment a in assessments)
        {
            foreach (PaperKind paper in papers)
            {
                // The first edition's will do for all.
                if (!paper.IsPerCandle || assessments.First(other => session.AreOfOne(other, a)) == a)
                {
                    outcomes.AddRange(
                        Make(paper, a, paper.IsPerCandle || paper.IsOfMaker ? "" : PrefixOf(a)).Select(outcome => (a, outcome))
                    );
                }
            }
        }

        return outcomes;
    }

    /// <summary>Says which papers will be made of every candle, so that one can tell how far the work is.</summary>
    public void Expect(IEnumerable<PaperKind> papers) => expected = assessments.Sum(a => papers.Sum(p => p.LanguagesOf(a).Count));

    /// <summary>What keeps a candle's files apart from those of other editions.</summary>
    public string PrefixOf(Assessment a) => session.PrefixOf(a, assessments);

    /// <summary>Makes the papers of a candle's dossier. Each is on its own, so all cores make them.</summary>
    /// <param name="papers">The kinds that there are.</param>
    /// <param name="a">The candle.</param>
    /// <param name="folder">What the names of its files begin with.</param>
    public void MakeForDossier(PaperList papers, Assessment a, string folder)
    {
        List<(PaperKind Paper, Language Language)> asked = [.. papers.DossierOf(a)];
        var drawn = new DrawnPaper[asked.Count];
        Parallel.For(0, asked.Count, i => drawn[i] = Draw(asked[i].Paper, a, asked[i].Language, folder, forDossier: true));
        foreach (DrawnPaper one in drawn)
        {
            Take(one, a, forDossier: true);
        }
    }

    // A language each where it is made so.
    private List<PaperOutcome> Make(PaperKind paper, Assessment a, string prefix)
    {
        List<DrawnPaper> drawn = [.. paper.LanguagesOf(a).Select(language => Draw(paper, a, language, prefix, forDossier: false))];
        drawn.ForEach(one => Take(one, a, forDossier: false));
        return [.. drawn.Select(one => one.Outcome)];
    }

    // Changes nothing of the run but how many are drawn, so that several threads may draw.
    private DrawnPaper Draw(PaperKind paper, Assessment a, Language language, string prefix, bool forDossier)
    {
        PaperOutcome outcome = paper.Make(session.Request(a, language, printer.Shop, settings));
        byte[] Pdf(MadePaper made) => printer.Pdf(made, paper, session, a);
        bool pdfOnly = forDossier && !paper.HasPicturesInDossier;
        IReadOnlyList<PendingFile> own = outcome is MadePaper made
            ? printer.Draw(prefix + paper.FileName(a, language, settings), made.Document, () => Pdf(made), pdfOnly)
            : [];
        session.Progress.Tell(Interlocked.Increment(ref drawn), expected);
        return new DrawnPaper(paper, language, outcome, own);
    }

    private void Take(DrawnPaper drawn, Assessment a, bool forDossier)
    {
        files.AddRange(drawn.Files);
        string called = drawn.Paper.CalledIn(a, drawn.Language);
        if (drawn.Outcome is MadePaper made)
        {
            // Papers of the same facts have the same to be minded.
            List<string> warnings = [.. made.Warnings.Where(w => warned.Add((a, drawn.Language, w)))];
            remarks.AddRange(
                forDossier && warnings.Count > 0
                    ? [$"{NameOf(a)}, {called}: {warnings.Count} to mind before it is handed out, said when it is made alone."]
                    : warnings.Select(w => $"{NameOf(a)}, {called}: {w}")
            );
        }
        else if (drawn.Outcome is MissingPaper missing)
        {
            remarks.Add($"{NameOf(a)}: no {called}{(missing.IsDue ? "" : " yet")}: {missing.Why}");
            problems.AddRange(missing.Problems.Except(problems.Found));
            lacksDuePaper |= missing.IsDue;
        }
    }

    /// <summary>Adds files that are no papers of the list.</summary>
    public void Add(IEnumerable<PendingFile> more) => files.AddRange(more);

    /// <summary>Writes what was made and says what is missing.</summary>
    /// <returns>The exit code.</returns>
    public int Finish()
    {
        if (files.Count == 0 && !problems.None)
        {
            return session.Report(problems.Found);
        }

        printer.Write(files, session);
        remarks.ForEach(session.Complain);
        return lacksDuePaper ? ExitCode.StopsSale : ExitCode.Fine;
    }

    /// <summary>Whether the candle is assessed under one edition alone.</summary>
    public bool IsOnlyEdition(Assessment a) => session.IsOnlyEdition(a, assessments);

    private string NameOf(Assessment a) => IsOnlyEdition(a) ? a.Id : $"{a.Id} ({a.Edition.Id})";
}
