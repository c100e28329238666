using Chandlery.Core.Assessed;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Limits;

namespace Chandlery.Core.Asked.Trials;

/// <summary>What a candle of a trial's blend would be in one edition of the law.</summary>
public sealed record TrialVerdict
{
    /// <summary>The trial.</summary>
    public required Trial Trial { get; init; }

    /// <summary>In what it was assessed.</summary>
    public required TrialQuestion Question { get; init; }

    /// <summary>Places of sale under this edition.</summary>
    public required IReadOnlyList<Place> Places { get; init; }

    /// <summary>What the law makes of it: classes, label elements, substances.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Limits of wax, oils and IFRA with their margins; those that could not be checked hold null.</summary>
    public required IReadOnlyList<LimitCheck> Limits { get; init; }

    /// <summary>What would stop the sale by what is in the candle; its vessel and papers are not looked at.</summary>
    public required IReadOnlyList<Finding> Stops { get; init; }

    /// <summary>What could not be assessed: never a sign that all is well.</summary>
    public required IReadOnlyList<string> Unassessed { get; init; }

    /// <summary>The shares of the finished candle.</summary>
    public Recipe Recipe => Verdict.Composition.Recipe;
}
