using Chandlery.Core.Quantities;

namespace Chandlery.Core.Composed;

/// <summary>The masses of a candle, relative to each other.</summary>
/// <param name="Oils">Oils.</param>
/// <param name="Waxes">Waxes of both pours.</param>
/// <param name="Extras">Extras.</param>
/// <param name="MeltLoadOfWax">Oil per 100 parts of wax in the scented melt.</param>
/// <param name="MeltLoadOfCandle">Oil in 100 parts of the scented melt.</param>
/// <param name="Load">Oil in 100 parts of the finished candle, after an unscented second pour.</param>
/// <param name="TopUp">Share of the unscented second pour; zero when there is none.</param>
public sealed record Recipe(
    IReadOnlyList<OilShare> Oils,
    IReadOnlyList<WaxShare> Waxes,
    IReadOnlyList<ExtraShare> Extras,
    MassPercent MeltLoadOfWax,
    MassPercent MeltLoadOfCandle,
    MassPercent Load,
    MassPercent TopUp
);
