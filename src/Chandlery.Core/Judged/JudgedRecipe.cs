using System.Collections.Concurrent;
using Chandlery.Core.Composed;

namespace Chandlery.Core.Judged;

/// <summary>A recipe's composition with what laws make of it, each asked once.</summary>
/// <param name="composition">What is in it.</param>
internal sealed class JudgedRecipe(Composition composition)
{
    private readonly ConcurrentDictionary<LawInForce, Verdict> verdicts = new();

    /// <summary>What is in it.</summary>
    public Composition Composition => composition;

    /// <summary>What a law makes of it.</summary>
    public Verdict Under(LawInForce law) => verdicts.GetOrAdd(law, static (asked, of) => asked.Judge(of), composition);
}
