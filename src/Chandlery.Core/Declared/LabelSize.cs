using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>The size of a label that the maker asks for.</summary>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
public sealed record LabelSize(Millimetres Width, Millimetres Height)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Figures.Plain(Width.Value)} x {Figures.Plain(Height.Value)} mm";
}
