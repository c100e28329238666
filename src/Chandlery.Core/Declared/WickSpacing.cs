using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>How far apart the wick maker wants wicks of a kind to stand.</summary>
/// <param name="From">The least distance between neighbours, from middle to middle.</param>
/// <param name="To">The greatest.</param>
public sealed record WickSpacing(Millimetres From, Millimetres To);
