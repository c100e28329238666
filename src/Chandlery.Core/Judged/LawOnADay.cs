using Chandlery.Core.Classified;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;

namespace Chandlery.Core.Judged;

/// <summary>Picks the law that binds on a day.</summary>
public static class LawOnADay
{
    /// <summary>The edition as it binds on a day.</summary>
    /// <param name="edition">The edition.</param>
    /// <param name="day">The day; not before <see cref="Edition.KnownFrom"/>.</param>
    /// <param name="onMarketSince">Since when the candle has been sold; null for a new one.</param>
    /// <exception cref="ArgumentOutOfRangeException">No law is known for that day; ask <see cref="Edition.KnownFrom"/> first.</exception>
    public static LawInForce On(this Edition edition, DateOnly day, DateOnly? onMarketSince = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(day, edition.KnownFrom);
        return new LawInForce(
            edition,
            day,
            onMarketSince,
            new SubstanceResolver(edition.Substances, day, edition.Harmonised, PhysicalState.Solid),
            new PrecautionChoices(edition.Precautions)
        );
    }
}
