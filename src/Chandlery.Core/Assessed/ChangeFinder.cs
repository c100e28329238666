using Chandlery.Core.Composed;
using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Assessed;

/// <summary>Finds the next change of the law that would alter a candle's label, law apart from expectation.</summary>
internal sealed class ChangeFinder(Verdict now, Millilitres capacity)
{
    private readonly Edition edition = now.Law.Edition;
    private readonly Composition composition = now.Composition;

    /// <summary>The next change that is law, and the next that is only expected; each null when none is known.</summary>
    public (LegalChange? Law, LegalChange? Expected) Next()
    {
        DateOnly day = now.Law.Day;
        LegalChange? law = Changes().FirstOrDefault();
        LabelFormat today = now.Law.Format;
        LegalChange? expected = edition
            .Formats.After(day)
            .Where(f => f.Status == LegalStatus.Expected)
            .Select(f => new LegalChange(f.From, LegalStatus.Expected, [.. FormatChanges(today, f)], f.Clause))
            .FirstOrDefault(c => c.What.Count > 0);
        return (law, expected);
    }

    /// <summary>The next change that is law and that alters classes or statements; null when none is known.</summary>
    public LegalChange? NextOfElements()
    {
        if (Changes().FirstOrDefault(c => c.AltersElements) is not { } change)
        {
            return null;
        }

        DateOnly before = change.On.AddDays(-1);
        Verdict stock = edition.On(before, before).ForState(now.Law.State).Judge(composition);
        return change with
        {
            StockFrom = new ChangeFinder(stock, capacity).Changes().FirstOrDefault(c => c.AltersElements)?.On ?? change.On,
        };
    }

    private IEnumerable<LegalChange> Changes() =>
        edition
            .RulesFor(now.Law.State)
            .SelectMany(r => r.InForce.Turns())
            .Concat(EntriesOfThis().Select(e => e.From))
            .Concat(edition.IngredientStatements.SelectMany(s => s.InForce.Turns()))
            .Concat(edition.Formats.Formats.Where(f => f.Status == LegalStatus.Law).Select(f => f.From))
            .Where(d => d > now.Law.Day)
            .Distinct()
            .Order()
            .Select(turn => Compare(now.Law.Day, turn))
            .OfType<LegalChange>();

    private IEnumerable<HarmonisedEntry> EntriesOfThis() =>
        composition.Ingredients.SelectMany(i => edition.Substances.HistoriesOf(i.Identity)).SelectMany(h => h.Versions);

    private LegalChange? Compare(DateOnly day, DateOnly turn)
    {
        (LabelElements before, string classesBefore) = LabelOn(day);
        (LabelElements after, string classesAfter) = LabelOn(turn);
        var what = new List<string>();
        if (classesBefore != classesAfter)
        {
            what.Add($"classes: {Or(classesBefore)} become {Or(classesAfter)}");
        }

        string statementsBefore = Codes(before);
        string statementsAfter = Codes(after);
        if (statementsBefore != statementsAfter)
        {
            what.Add($"label elements: {Or(statementsBefore)} become {Or(statementsAfter)}");
        }

        bool altersElements = what.Count > 0;
        LabelFormat formatBefore = edition.Formats.On(day);
        LabelFormat formatAfter = edition.Formats.On(turn);
        what.AddRange(FormatChanges(formatBefore, formatAfter));
        Citation clause = formatBefore != formatAfter ? formatAfter.Clause : ClauseOf(turn);
        return what.Count == 0 ? null : new LegalChange(turn, LegalStatus.Law, what, clause) { AltersElements = altersElements };
    }

    // An entry that turns is one of this candle's own; a rule that turns may have nothing to do with it.
    private Citation ClauseOf(DateOnly turn) =>
        EntriesOfThis().FirstOrDefault(e => e.From == turn) is { } entry
            ? Citation.Of(entry.Act.Title)
            : edition.RulesFor(now.Law.State).FirstOrDefault(r => r.InForce.Turns().Contains(turn))?.Clause
                ?? edition.IngredientStatements.FirstOrDefault(s => s.InForce.Turns().Contains(turn))?.Clause
                ?? Citation.None;

    private IEnumerable<string> FormatChanges(LabelFormat before, LabelFormat after)
    {
        SizeBand old = before.BandFor(capacity);
        SizeBand now = after.BandFor(capacity);
        if (old.XHeight != now.XHeight)
        {
            yield return $"letters: lower-case x of at least {now.XHeight} instead of {old.XHeight}";
        }

        if (old.Label != now.Label || old.Pictogram != now.Pictogram)
        {
            yield return $"sizes: label {now.Label} with pictograms of {now.Pictogram} instead of {old.Label} with {old.Pictogram}";
        }

        // Letter heights that we already keep as advice become a duty.
        if (before != after && after.Status == LegalStatus.Law && old.XHeight == now.XHeight)
        {
            yield return $"letters of {now.XHeight} and line spacing, kept here as advice, become a duty";
        }
    }

    private (LabelElements Label, string Classes) LabelOn(DateOnly day)
    {
        Verdict verdict = day == now.Law.Day ? now : edition.On(day, now.Law.OnMarketSince).ForState(now.Law.State).Judge(composition);
        return (verdict.Label, string.Join(", ", verdict.Classification.Classes.Select(c => c.Category.Code)));
    }

    private static string Codes(LabelElements label) => string.Join(' ', label.All.Except(label.Precautionary).Select(c => c.Text));

    private static string Or(string text) => text.Length == 0 ? "none" : text;
}
