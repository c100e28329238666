namespace Chandlery.Core.Quantities;

/// <summary>A mass in grams.</summary>
/// <param name="Value">Grams.</param>
public readonly record struct Grams(double Value)
{
    /// <summary>Sum of two masses.</summary>
    public static Grams operator +(Grams left, Grams right) => new(left.Value + right.Value);

    /// <inheritdoc/>
    public override string ToString() => Figures.Plain(Value) + " g";
}
