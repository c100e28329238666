namespace Chandlery.Register;

/// <summary>Numbers of entries that something is true of.</summary>
internal interface INumbers
{
    /// <summary>The next numbers.</summary>
    /// <param name="store">The database.</param>
    /// <param name="from">The first that may come.</param>
    /// <param name="latestFirst">Whether they come from the latest to the oldest.</param>
    /// <param name="count">How many at most; fewer only when there are no more.</param>
    IReadOnlyList<long> Read(RegisterStore store, long from, bool latestFirst, int count);
}
