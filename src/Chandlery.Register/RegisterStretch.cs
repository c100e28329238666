namespace Chandlery.Register;

/// <summary>Where to begin to read a register, and in which order.</summary>
/// <param name="From">Number of the first entry that may come.</param>
/// <param name="LatestFirst">Whether entries come from the latest to the oldest.</param>
public sealed record RegisterStretch(long From, bool LatestFirst)
{
    /// <summary>All entries, oldest first.</summary>
    public static RegisterStretch All { get; } = new(1, false);

    /// <summary>All entries, latest first.</summary>
    public static RegisterStretch Latest { get; } = new(long.MaxValue, true);
}
