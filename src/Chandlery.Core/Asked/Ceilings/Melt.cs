namespace Chandlery.Core.Asked.Ceilings;

/// <summary>Fractions of the scented melt.</summary>
/// <param name="Oils">Each oil's fraction.</param>
/// <param name="Wax">The wax's fraction.</param>
/// <param name="Extras">Each extra's fraction.</param>
internal sealed record Melt(IReadOnlyList<double> Oils, double Wax, IReadOnlyList<double> Extras)
{
    public static Melt Mix(Melt a, Melt b, double x) =>
        new(
            [.. a.Oils.Zip(b.Oils, (p, q) => (p * (1 - x)) + (q * x))],
            (a.Wax * (1 - x)) + (b.Wax * x),
            [.. a.Extras.Zip(b.Extras, (p, q) => (p * (1 - x)) + (q * x))]
        );
}
