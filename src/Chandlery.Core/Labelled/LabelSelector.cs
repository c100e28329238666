using Chandlery.Core.Classified;
using Chandlery.Core.Law;

namespace Chandlery.Core.Labelled;

/// <summary>Chooses the label elements that follow from a classification (CLP Art. 17 to 28 in the EU).</summary>
public static class LabelSelector
{
    /// <summary>The label elements.</summary>
    public static LabelElements Select(Edition edition, Classification classification)
    {
        var leftOff = new List<LabelChoice>();
        List<LabelChoice> statements = Statements(edition, classification, leftOff);
        List<LabelChoice> pictograms = Pictograms(edition, classification, leftOff);
        List<LabelChoice> hazard = [.. statements.Where(s => !s.Code.StartsWith("EUH", StringComparison.Ordinal))];
        List<LabelChoice> supplemental = [.. statements.Where(s => s.Code.StartsWith("EUH", StringComparison.Ordinal))];
        if (classification.Supplemental is { } code)
        {
            supplemental.Add(
                new LabelChoice(
                    code,
                    "the candle is not classified as sensitising, but it holds a sensitiser at or over its elicitation limit",
                    classification.Sensitisers[0].Working.Clause
                )
            );
        }

        // Precautionary statements follow from the classes, not from which statement stands for two of them.
        IEnumerable<string> called = classification.Classes.Select(c => c.Category.Statement);
        return new LabelElements(
            pictograms,
            SignalWord(edition, classification),
            hazard,
            supplemental,
            PrecautionSelector.Select(edition.Precautions, [.. called], leftOff),
            [.. Named(edition, classification)],
            leftOff
        );
    }

    private static List<LabelChoice> Statements(Edition edition, Classification classification, List<LabelChoice> leftOff)
    {
        var statements = classification
            .Classes.Select(c => new LabelChoice(c.Statement, c.Working.Sentence, c.Working.Clause))
            .DistinctBy(s => s.Code)
            .ToList();
        foreach (StatementPrecedence rule in edition.Statements)
        {
            if (!rule.All.All(code => statements.Any(s => s.Code == code)))
            {
                continue;
            }

            List<LabelChoice> gone = [.. statements.Where(s => rule.LeaveOff.Contains(s.Code) && s.Code != rule.Use)];
            statements.RemoveAll(s => gone.Contains(s));
            leftOff.AddRange(gone.Select(g => new LabelChoice(g.Code, $"{rule.Use} says it already", rule.Clause)));
            if (statements.All(s => s.Code != rule.Use))
            {
                statements.Add(new LabelChoice(rule.Use, string.Join(" ", gone.Select(g => g.Because)), rule.Clause));
            }
        }

        return [.. statements.OrderBy(s => s.Code, StringComparer.Ordinal)];
    }

    private static List<LabelChoice> Pictograms(Edition edition, Classification classification, List<LabelChoice> leftOff)
    {
        List<(LabelElement Element, ClassResult Class)> calls =
        [
            .. classification.Classes.SelectMany(c =>
                edition.Elements.Where(e => e.Hazard.Index == c.Category.Index && e.Pictogram is not null).Select(e => (e, c))
            ),
        ];
        var present = calls.Select(c => c.Element.Pictogram!).ToHashSet();
        var gone = new HashSet<string>();
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
                leftOff.Add(new LabelChoice(rule.LeaveOff, $"{rule.WhenPresent} is there", rule.Clause));
            }
        }

        return
        [
            .. calls
                .Where(c => !gone.Contains(c.Element.Pictogram!))
                .GroupBy(c => c.Element.Pictogram!)
                .OrderBy(g => g.Key, StringComparer.Ordinal)
                .Select(g => new LabelChoice(
                    g.Key,
                    "called for by " + string.Join(", ", g.Select(c => c.Class.Category.Code)),
                    g.First().Element.Clause
                )),
        ];
    }

    private static LabelChoice? SignalWord(Edition edition, Classification classification)
    {
        List<(string Word, ClassResult Class, string Clause)> words =
        [
            .. classification.Classes.SelectMany(c =>
                edition
                    .Elements.Where(e => e.Hazard.Index == c.Category.Index && e.SignalWord is not null)
                    .Select(e => (e.SignalWord!, c, e.Clause))
            ),
        ];
        string? word =
            words.Any(w => w.Word == "Danger") ? "Danger"
            : words.Count > 0 ? "Warning"
            : null;
        return word is null
            ? null
            : new LabelChoice(
                word,
                "called for by " + string.Join(", ", words.Where(w => w.Word == word).Select(w => w.Class.Category.Code)),
                words.First(w => w.Word == word).Clause
            );
    }

    private static IEnumerable<NamedSubstance> Named(Edition edition, Classification classification)
    {
        // The graver class first, so that the four that are normally enough are the ones chiefly responsible.
        var named = new List<NamedSubstance>();
        foreach (ClassResult result in classification.Classes.Where(c => c.Rule.Names.Contains(c.Category)))
        {
            foreach (Substance substance in result.Causes.OrderByDescending(s => s.Ingredient.WholeHigh.Value))
            {
                bool always = classification.Sensitisers.Any(s => s.Substance == substance);
                if (named.All(n => n.Name != substance.Name) && (always || named.Count < edition.NamesNormallyEnough))
                {
                    named.Add(
                        new NamedSubstance(
                            substance.Name,
                            substance.Ingredient.Identity.Cas?.Text,
                            $"behind {result.Category.Code}",
                            edition.NamingClause
                        )
                    );
                }
            }
        }

        foreach (Sensitiser sensitiser in classification.Sensitisers.OrderByDescending(s => s.Working.Value / s.Working.Threshold))
        {
            if (named.All(n => n.Name != sensitiser.Substance.Name))
            {
                named.Add(
                    new NamedSubstance(
                        sensitiser.Substance.Name,
                        sensitiser.Substance.Ingredient.Identity.Cas?.Text,
                        sensitiser.Working.Sentence,
                        sensitiser.Working.Clause
                    )
                );
            }
        }

        return named;
    }
}
