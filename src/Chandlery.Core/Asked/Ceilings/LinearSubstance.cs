using Chandlery.Core.Classified;

namespace Chandlery.Core.Asked.Ceilings;

/// <summary>A substance whose share runs linearly between two ends.</summary>
/// <param name="Substance">The substance; its share is that at the far end.</param>
/// <param name="High0">High end at the near end of the line, percent.</param>
/// <param name="High1">High end at the far end.</param>
/// <param name="Whole0">Whole share at the near end.</param>
/// <param name="Whole1">Whole share at the far end.</param>
internal sealed record LinearSubstance(Substance Substance, double High0, double High1, double Whole0, double Whole1)
{
    public double High(double x) => High0 + ((High1 - High0) * x);

    /// <summary>Where the share equals a value; null when it never does.</summary>
    public static double? Root(double at0, double at1, double value) => at1 == at0 ? null : (value - at0) / (at1 - at0);
}
