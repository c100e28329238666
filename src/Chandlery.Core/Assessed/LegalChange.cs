using Chandlery.Core.Hazards;
using Chandlery.Core.Law;

namespace Chandlery.Core.Assessed;

/// <summary>A change of the law that would alter this candle's label.</summary>
/// <param name="On">First day.</param>
/// <param name="Status">Law, or only expected.</param>
/// <param name="What">What would change, a sentence each.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record LegalChange(DateOnly On, LegalStatus Status, IReadOnlyList<string> What, Citation Clause)
{
    /// <summary>True where classes or statements change, and not only how large they stand.</summary>
    public bool AltersElements { get; init; }

    /// <summary>The day from which it binds what was placed on the market the day before; the same day where it gives stock no time.</summary>
    public DateOnly StockFrom { get; init; } = On;
}
