using Chandlery.Core.Hazards;
using Chandlery.Core.Law;

namespace Chandlery.Core.Classified;

/// <summary>A class that the candle has. Its explanation is worked out when somebody asks, since most of a catalogue is never asked about.</summary>
public sealed class ClassResult(HazardCategory category, ClassRule rule, Func<Explanation> explain)
{
    private readonly Lazy<Explanation> explanation = new(explain);

    /// <summary>Class and category.</summary>
    public HazardCategory Category => category;

    /// <summary>The rule that gave it.</summary>
    public ClassRule Rule => rule;

    /// <summary>Hazard statement, with the letters that say more where all causes agree.</summary>
    public StatementCode Statement => explanation.Value.Statement;

    /// <summary>How it was found.</summary>
    public Working Working => explanation.Value.Working;

    /// <summary>The substances behind it, the one that adds most first.</summary>
    public IReadOnlyList<Substance> Causes => explanation.Value.Causes;
}
