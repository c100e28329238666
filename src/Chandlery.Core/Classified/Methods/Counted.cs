using Chandlery.Core.Law;

namespace Chandlery.Core.Classified.Methods;

/// <summary>What one substance adds to a rung.</summary>
/// <param name="Substance">The substance.</param>
/// <param name="Hazard">Its hazard that counts.</param>
/// <param name="Term">The term of the rung that it counts in.</param>
/// <param name="SharePercent">Its share that counts, percent of the candle.</param>
/// <param name="LimitPercent">The share at which it alone would fill the rung, percent.</param>
/// <param name="Part">Share over limit: how much of the rung it fills.</param>
public readonly record struct Counted(
    Substance Substance,
    SubstanceHazard Hazard,
    Term Term,
    double SharePercent,
    double LimitPercent,
    double Part
);
