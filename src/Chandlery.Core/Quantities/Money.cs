using System.Globalization;

namespace Chandlery.Core.Quantities;

/// <summary>An amount in the maker's currency.</summary>
/// <param name="Amount">How much.</param>
public readonly record struct Money(decimal Amount)
{
    /// <summary>Sum of two amounts.</summary>
    public static Money operator +(Money left, Money right) => new(left.Amount + right.Amount);

    /// <summary>So many times an amount.</summary>
    public static Money operator *(Money left, double times) => new(left.Amount * (decimal)times);

    /// <summary>Two decimals, with a decimal point.</summary>
    public override string ToString() =>
        Math.Round(Amount, 2, MidpointRounding.AwayFromZero).ToString("0.00", CultureInfo.InvariantCulture);
}
