namespace Chandlery.Core.Quantities;

/// <summary>A temperature in degrees Celsius.</summary>
/// <param name="Value">Degrees Celsius.</param>
public readonly record struct Celsius(double Value)
{
    /// <inheritdoc/>
    public override string ToString() => Figures.Plain(Value) + " °C";
}
