namespace Chandlery.Core.Classified.Methods;

/// <summary>Keeps all that counts, for the working.</summary>
internal readonly struct ListingCounter(List<Counted> list) : ICounter
{
    /// <inheritdoc/>
    public void Count(in Counted counted) => list.Add(counted);
}
