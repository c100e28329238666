using Chandlery.Core.Hazards;

namespace Chandlery.Core.Classified;

/// <summary>A class that somebody gives a substance.</summary>
/// <param name="Claim">The class.</param>
/// <param name="Source">Who gives it.</param>
internal sealed record Word(HazardClaim Claim, HazardSource Source)
{
    /// <summary>The word that counts: the most severe, and of the equally severe that of the highest standing.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public static Word Worst(IEnumerable<Word> words) =>
        words.OrderBy(w => w.Claim.Category.Severity).ThenByDescending(w => w.Source.Standing).First();
}
