namespace Chandlery.Core.Quantities;

/// <summary>A volume in millilitres.</summary>
/// <param name="Value">Millilitres.</param>
public readonly record struct Millilitres(double Value)
{
    /// <inheritdoc/>
    public override string ToString() => Figures.Plain(Value) + " ml";
}
