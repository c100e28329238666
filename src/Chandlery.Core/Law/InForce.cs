namespace Chandlery.Core.Law;

/// <summary>The days on which something holds.</summary>
/// <param name="From">First day; null when it always did.</param>
/// <param name="Until">Last day; null when no end is known.</param>
/// <param name="ExistingFrom">First day for what was already on the market on <paramref name="From"/>; null when the same.</param>
public sealed record InForce(DateOnly? From, DateOnly? Until, DateOnly? ExistingFrom = null)
{
    /// <summary>True on that day.</summary>
    /// <param name="day">The day.</param>
    /// <param name="onMarketSince">Since when the candle has been sold; null for a new one.</param>
    public bool On(DateOnly day, DateOnly? onMarketSince = null) =>
        (BindsFrom(onMarketSince) is not { } first || day >= first) && (Until is not { } until || day <= until);

    /// <summary>The first day on which it binds such a candle; null when it always did.</summary>
    /// <param name="onMarketSince">Since when the candle has been sold; null for a new one.</param>
    public DateOnly? BindsFrom(DateOnly? onMarketSince) => ExistingFrom is not null && onMarketSince < From ? ExistingFrom : From;

    /// <summary>Days on which something begins or has ended.</summary>
    public IEnumerable<DateOnly> Turns() => new[] { From, ExistingFrom, Until?.AddDays(1) }.OfType<DateOnly>();
}
