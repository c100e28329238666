namespace Chandlery.Core.Quantities;

/// <summary>A length in millimetres.</summary>
/// <param name="Value">Millimetres.</param>
public readonly record struct Millimetres(double Value)
{
    /// <summary>In centimetres, to the millimetre.</summary>
    public string InCentimetres => $"{Figures.Rounded(Value / 10, 1)} cm";

    /// <inheritdoc/>
    public override string ToString() => Figures.Plain(Value) + " mm";
}
