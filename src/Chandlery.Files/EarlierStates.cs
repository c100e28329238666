using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.SafetyFiles.TechnicalFiles;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>Assesses a candle as it was declared once, under the law of then.</summary>
public static class EarlierStates
{
    /// <summary>The candle as the texts of then declare it.</summary>
    /// <param name="lawbook">The law.</param>
    /// <param name="a">The candle as it is.</param>
    /// <param name="called">What the earlier state is called.</param>
    /// <param name="texts">Declarations, each with its path.</param>
    /// <param name="day">The day whose law is applied, YYYY-MM-DD.</param>
    public static EarlierVersion Of(
        Lawbook lawbook,
        Assessment a,
        string called,
        IReadOnlyList<(string Path, string Text)> texts,
        string day
    )
    {
        var problems = new Problems();
        Catalogue then = DeclaredTexts.Read(texts, lawbook.Vocabulary, problems);
        return IsoDay.Parse(day) is { Success: true } on
            ? Of(lawbook, a, called, then, on.Value, problems)
            : new EarlierVersion(called, null, "its day cannot be read.");
    }

    /// <summary>The candle as a catalogue of then declares it.</summary>
    /// <param name="lawbook">The law.</param>
    /// <param name="a">The candle as it is.</param>
    /// <param name="called">What the earlier state is called.</param>
    /// <param name="then">All that was declared.</param>
    /// <param name="day">The day whose law is applied.</param>
    /// <param name="problems">What was wrong with the declarations; more is added.</param>
    public static EarlierVersion Of(Lawbook lawbook, Assessment a, string called, Catalogue then, DateOnly day, Problems problems)
    {
        IDeclaration? declared = a.Batch is null
            ? then.OfKind<Candle>().FirstOrDefault(c => c.Id == a.Candle.Id)
            : then.OfKind<Batch>().FirstOrDefault(b => b.Id == a.Id);
        Assessment? was = declared is null
            ? null
            : new Assessor(lawbook, then, day).Assess(declared, null, problems).FirstOrDefault(e => e.Edition.Id == a.Edition.Id);
        return new EarlierVersion(
            called,
            was,
            was is not null ? ""
                : problems.None ? "it does not hold the candle under this law."
                : $"it cannot be assessed any more: {problems.Found[0]}"
        );
    }
}
