using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>What an IFRA certificate allows in one product category.</summary>
/// <param name="Highest">Highest share of the finished product; 100 % when not restricted; 0 % when not permitted.</param>
public sealed record IfraLimit(MassPercent Highest);
