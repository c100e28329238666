namespace Chandlery.Core.Quantities;

/// <summary>A kinematic viscosity in square millimetres per second.</summary>
/// <param name="Value">Square millimetres per second.</param>
public readonly record struct SquareMillimetresPerSecond(double Value)
{
    /// <inheritdoc/>
    public override string ToString() => Figures.Plain(Value) + " mm²/s";
}
