using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
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

    /// <summary>Makes papers of all candles, one file beside the other.</summary>
    /// <returns>What came of each.</returns>
    public IReadOnlyList<(Assessment Assessment, PaperOutcome Outcome)> MakeAll(IReadOnlyList<PaperKind> papers)
    {
        var outcomes = new List<(Assessment, PaperOutcome)>();
        foreach (Assessment a in assessments)
        {
            foreach (PaperKind paper in papers)
            {
                // The first edition's will do for all.
                if (!paper.IsPerCandle || assessments.First(other => other.Id == a.Id) == a)
                {
                    outcomes.AddRange(Make(paper, a, paper.IsPerCandle ? "" : PrefixOf(a)).Select(outcome => (a, outcome)));
                }
            }
        }

        return outcomes;
    }

    /// <summary>What keeps a candle's files apart from those of other editions.</summary>
    public string PrefixOf(Assessment a) => IsOnlyEdition(a) ? "" : a.Edition.Id + "-";

    /// <summary>Makes a paper of a candle.</summary>
    /// <param name="paper">The kind.</param>
    /// <param name="a">The candle.</param>
    /// <param name="prefix">What the names of its files begin with: a folder, or what keeps them apart.</param>
    /// <param name="forDossier">Whether it is one of many in a dossier.</param>
    /// <returns>What came of it, a language each where it is made so.</returns>
    public IReadOnlyList<PaperOutcome> Make(PaperKind paper, Assessment a, string prefix, bool forDossier = false)
    {
        var outcomes = new List<PaperOutcome>();
        foreach (Language language in paper.LanguagesOf(a))
        {
            PaperOutcome outcome = paper.Make(session.Request(a, language, printer.Shop, settings));
            outcomes.Add(outcome);
            string called = paper.CalledIn(a, language);
            if (outcome is MadePaper made)
            {
                byte[] Pdf() => printer.Pdf(made, session.Declarations, [a]);
                Add(printer.Draw(prefix + paper.FileName(a, language), made.Document, Pdf, forDossier && !paper.HasPicturesInDossier));

                // Papers of the same facts have the same to be minded.
                List<string> warnings = [.. made.Warnings.Where(w => warned.Add((a, language, w)))];
                remarks.AddRange(
                    forDossier && warnings.Count > 0
                        ? [$"{NameOf(a)}, {called}: {warnings.Count} to mind before it is handed out, said when it is made alone."]
                        : warnings.Select(w => $"{NameOf(a)}, {called}: {w}")
                );
            }
            else if (outcome is MissingPaper missing)
            {
                remarks.Add($"{NameOf(a)}: no {called}{(missing.IsDue ? "" : " yet")}: {missing.Why}");
                problems.AddRange(missing.Problems.Except(problems.Found));
                lacksDuePaper |= missing.IsDue;
            }
        }

        return outcomes;
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

        printer.Write(files, session.Output);
        remarks.ForEach(session.Complain);
        return lacksDuePaper ? ExitCode.StopsSale : ExitCode.Fine;
    }

    /// <summary>Whether the candle is assessed under one edition alone.</summary>
    public bool IsOnlyEdition(Assessment a) => assessments.Count(other => other.Id == a.Id) == 1;

    private string NameOf(Assessment a) => IsOnlyEdition(a) ? a.Id : $"{a.Id} ({a.Edition.Id})";
}
