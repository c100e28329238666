using Chandlery.Core.Classified;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;

namespace Chandlery.Core.Labelled;

/// <summary>Chooses the label elements that follow from a classification (CLP Art. 17 to 28 in the EU).</summary>
internal static class LabelSelector
{
    /// <summary>The label elements.</summary>
    public static LabelElements Select(Edition edition, Classification classification, PrecautionChoices precautions)
    {
        var leftOff = new List<LeftOffChoice>();
        List<StatementChoice> statements = Statements(edition, classification, leftOff);
        List<PictogramChoice> pictograms = Pictograms(edition, classification, leftOff);
        List<StatementChoice> supplemental = [.. statements.Where(s => s.Code.IsSupplemental)];
        if (classification.Supplemental is { } code)
        {
            supplemental.Add(
                new StatementChoice(
                    code,
                    "the candle is not classified as sensitising, but it holds a sensitiser at or over its elicitation limit",
                    classification.Sensitisers[0].Working.Clause
                )
                {
                    NamesSubstances = true,
                }
            );
        }

        // Precautionary statements follow from the classes, not from which statement stands for two of them.
        PrecautionChoice precautionary = precautions.For([.. classification.Classes.Select(c => c.Category.Statement)]);
        leftOff.AddRange(precautionary.LeftOff);
        return new LabelElements(
            pictograms,
            ChooseSignalWord(edition, classification),
            [.. statements.Where(s => !s.Code.IsSupplemental)],
            supplemental,
            precautionary.Chosen,
            NamedSubstances.Of(edition.Naming, classification),
            leftOff
        );
    }

    private static List<StatementChoice> Statements(Edition edition, Classification classification, List<LeftOffChoice> leftOff)
    {
        var statements = classification
            .Classes.Select(c => new StatementChoice(c.Statement, c.Working.Sentence, c.Working.Clause) { Organs = c.Organs })
            .DistinctBy(s => s.Code)
            .ToList();
        foreach (StatementPrecedence rule in edition.Statements)
        {
            if (!rule.All.All(code => statements.Any(s => s.Code == code)))
            {
                continue;
            }

            List<StatementChoice> gone = [.. statements.Where(s => rule.LeaveOff.Contains(s.Code) && s.Code != rule.Use)];
            statements.RemoveAll(gone.Contains);
            leftOff.AddRange(gone.Select(g => new LeftOffChoice(g.Code, $"{rule.Use} says it already", rule.Clause)));
            if (statements.All(s => s.Code != rule.Use))
            {
                statements.Add(new StatementChoice(rule.Use, string.Join(" ", gone.Select(g => g.Because)), rule.Clause));
            }
        }

        return [.. statements.OrderBy(s => s.Code.Text, StringComparer.Ordinal)];
    }

    private static List<PictogramChoice> Pictograms(Edition edition, Classification classification, List<LeftOffChoice> leftOff)
    {
        List<(LabelElement Element, ClassResult Class)> calls =
        [
            .. classification.Classes.SelectMany(c =>
                edition.ElementsOf(c.Category).Where(e => e.Pictogram is not null).Select(e => (e, c))
            ),
        ];
        var present = calls.Select(c => c.Element.Pictogram!).ToHashSet();
        var gone = new HashSet<Pictogram>();
        foreach (PictogramPrecedence rule in edition.Pictograms)
        {
            bool applies =
                present.Contains(rule.WhenPresent)
                && present.Contains(rule.LeaveOff)
                && (rule.WhenStatement is null || calls.Any(c => c.Class.Category.Statement == rule.WhenStatement));

            // The displaced picture goes only for the statements that the clause names; another statement keeps it.
            if (
                applies
                && calls
                    .Where(c => c.Element.Pictogram == rule.LeaveOff)
                    .All(c => rule.CalledForOnlyBy.Count == 0 || rule.CalledForOnlyBy.Contains(c.Class.Category.Statement))
            )
            {
                gone.Add(rule.LeaveOff);
                leftOff.Add(new LeftOffChoice(rule.LeaveOff, $"{rule.WhenPresent} is there", rule.Clause));
            }
        }

        return
        [
            .. calls
                .Where(c => !gone.Contains(c.Element.Pictogram!))
                .GroupBy(c => c.Element.Pictogram!)
                .OrderBy(g => g.Key.Code, StringComparer.Ordinal)
                .Select(g => new PictogramChoice(
                    g.Key,
                    "called for by " + string.Join(", ", g.Select(c => c.Class.Category.Code)),
                    g.First().Element.Clause
                )),
        ];
    }

    private static SignalWordChoice? ChooseSignalWord(Edition edition, Classification classification)
    {
        List<(SignalWord Word, ClassResult Class, Citation Clause)> words =
        [
            .. classification.Classes.SelectMany(c =>
                edition.ElementsOf(c.Category).Where(e => e.SignalWord is not null).Select(e => (e.SignalWord!, c, e.Clause))
            ),
        ];
        return SignalWord.All.FirstOrDefault(word => words.Any(w => w.Word == word)) is { } word
            ? new SignalWordChoice(
                word,
                "called for by " + string.Join(", ", words.Where(w => w.Word == word).Select(w => w.Class.Category.Code)),
                words.First(w => w.Word == word).Clause
            )
            : null;
    }
}
