using Chandlery.Core.Composed;
using Chandlery.Core.Declared;

namespace Chandlery.Core.Asked.Trials;

/// <summary>A blend that keeps to what was asked.</summary>
/// <param name="Verdict">What a candle of it would be.</param>
/// <param name="MovedPercent">How much of the blend is another oil than in the trial, percent; zero where only the load changed.</param>
/// <param name="Beyond">What begins just beyond it, in words; empty where nothing does.</param>
public sealed record TrialAnswer(TrialVerdict Verdict, double MovedPercent, IReadOnlyList<string> Beyond)
{
    /// <summary>The blend and load.</summary>
    public Recipe Recipe => Verdict.Recipe;

    /// <summary>The load.</summary>
    public FragranceLoad Load => new(Recipe.MeltLoadOfWax, LoadBasis.Wax);
}
