namespace Chandlery.Core.Quantities;

/// <summary>A length in millimetres.</summary>
/// <param name="Value">Millimetres.</param>
public readonly record struct Millimetres(double Value)
{
    /// <inheritdoc/>
    public override string ToString() => Figures.Plain(Value) + " mm";
}
