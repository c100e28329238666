using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>What was measured or certified of a finished liquid. None of it can be reckoned from its ingredients.</summary>
public sealed record LiquidFacts
{
    /// <summary>Density at 20 °C; it turns the volume on the label into mass.</summary>
    public required GramsPerMillilitre? Density { get; init; }

    /// <summary>Flash point of the finished liquid with its method; null when it was not measured.</summary>
    public required FlashPoint? FlashPoint { get; init; }

    /// <summary>Initial boiling point; null when it was not measured.</summary>
    public required Celsius? Boiling { get; init; }

    /// <summary>Whether it keeps on burning in the test for sustained combustion; null when it was not tested.</summary>
    public required bool? SustainsCombustion { get; init; }

    /// <summary>Kinematic viscosity at 40 °C, mm²/s; null when it was not measured.</summary>
    public required SquareMillimetresPerSecond? Viscosity { get; init; }

    /// <summary>Whether it can form a flammable mixture of vapour and air in use; null when nobody has said.</summary>
    public required bool? FormsFlammableVapour { get; init; }

    /// <summary>Classes for physical hazards that a supplier or laboratory gives the finished liquid; null when none does.</summary>
    public required IReadOnlyList<HazardClaim>? Classes { get; init; }

    /// <summary>The document that the figures stand in; null when none is named.</summary>
    public required string? Document { get; init; }
}
