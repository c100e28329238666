namespace Chandlery.Core.Quantities;

/// <summary>A share by mass, in percent (0 to 100) of a stated whole.</summary>
/// <param name="Value">Percent by mass.</param>
public readonly record struct MassPercent(double Value) : IComparable<MassPercent>
{
    /// <summary>
    /// How far below a limit a share may lie and still count as having reached it, relative to the limit. Shares are
    /// sums and products of binary fractions: without this, 10 % of 10 % might miss a limit of 1 % by the last bit.
    /// Counting such a share as "reached" is the stricter side.
    /// </summary>
    public const double RelativeTolerance = 1e-9;

    /// <summary>Nothing at all.</summary>
    public static MassPercent Zero { get; } = new(0);

    /// <summary>The whole.</summary>
    public static MassPercent Whole { get; } = new(100);

    /// <summary>True when this share is at or above <paramref name="limit"/> (see <see cref="RelativeTolerance"/>).</summary>
    public bool Reaches(MassPercent limit) => Reaches(Value, limit.Value);

    /// <summary>True when <paramref name="value"/> is at or above <paramref name="limit"/>; both in the same unit.</summary>
    public static bool Reaches(double value, double limit) => value >= limit * (1 - RelativeTolerance);

    /// <summary>
    /// True when this share is above <paramref name="limit"/>, and not only by the last bits of a binary fraction: what is
    /// meant to be exactly the limit is not above it (see <see cref="RelativeTolerance"/>).
    /// </summary>
    public bool Exceeds(MassPercent limit) => Value > limit.Value * (1 + RelativeTolerance);

    /// <summary>This share of another share: 10 % of 20 % is 2 %.</summary>
    public MassPercent Of(MassPercent whole) => new(Value * whole.Value / 100);

    /// <inheritdoc/>
    public int CompareTo(MassPercent other) => Value.CompareTo(other.Value);

    /// <summary>Sum of two shares of the same whole.</summary>
    public static MassPercent operator +(MassPercent left, MassPercent right) => new(left.Value + right.Value);

    /// <summary>Difference of two shares of the same whole.</summary>
    public static MassPercent operator -(MassPercent left, MassPercent right) => new(left.Value - right.Value);

    /// <summary>Order by size.</summary>
    public static bool operator <(MassPercent left, MassPercent right) => left.Value < right.Value;

    /// <summary>Order by size.</summary>
    public static bool operator >(MassPercent left, MassPercent right) => left.Value > right.Value;

    /// <summary>Order by size.</summary>
    public static bool operator <=(MassPercent left, MassPercent right) => left.Value <= right.Value;

    /// <summary>Order by size.</summary>
    public static bool operator >=(MassPercent left, MassPercent right) => left.Value >= right.Value;

    /// <summary>For example <c>9.09 %</c>: four significant figures, and never rounded down to nothing.</summary>
    public override string ToString() => Figures.Plain(Value) + " %";
}
