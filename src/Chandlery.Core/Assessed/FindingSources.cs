namespace Chandlery.Core.Assessed;

/// <summary>
/// What a maker must know of a product, found when somebody asks. Whether anything stops its sale takes only what may, which is all that
/// is asked of most of a catalogue.
/// </summary>
public sealed class FindingSources
{
    private readonly Lazy<IReadOnlyList<Finding>> all;

    internal FindingSources(IReadOnlyList<FindingSource> sources)
    {
        Sources = sources;
        all = new Lazy<IReadOnlyList<Finding>>(() => [.. sources.SelectMany(s => s.Find())]);
    }

    internal IReadOnlyList<FindingSource> Sources { get; }

    /// <summary>All findings, in the order in which they are told.</summary>
    public IReadOnlyList<Finding> All => all.Value;

    /// <summary>True when something stops the sale.</summary>
    public bool StopSale => Sources.Any(s => s.MayStop && s.Find().Any(f => f.Gravity == Gravity.Stop));
}
