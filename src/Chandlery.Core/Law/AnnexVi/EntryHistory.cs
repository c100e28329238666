namespace Chandlery.Core.Law.AnnexVi;

/// <summary>All that an index number has said, the oldest first.</summary>
/// <param name="IndexNumber">The index number.</param>
/// <param name="Versions">What each act made of it, in the order of the acts.</param>
public sealed record EntryHistory(string IndexNumber, IReadOnlyList<HarmonisedEntry> Versions)
{
    /// <summary>What holds on a day, or null before the first act and where an act took the entry out.</summary>
    /// <param name="day">The day.</param>
    /// <param name="upTo">The last act that was taken over; null where all were.</param>
    public HarmonisedEntry? On(DateOnly day, LegalAct? upTo = null) =>
        Versions.LastOrDefault(v => v.From <= day && (upTo is null || v.Act.Order <= upTo.Order)) is { Stands: true } entry ? entry : null;
}
