namespace Chandlery.Tests.SecondCalculation;

/// <summary>
/// Comparisons of shares. Binary fractions miss decimal limits by their last bits (0.1 + 0.2 is not 0.3), so a billionth of
/// the limit is forgiven: what was declared to lie exactly on a limit lies on it.
/// </summary>
internal static class Shares
{
    private const double Forgiven = 1e-9;

    /// <summary>True when the value is the limit or more.</summary>
    public static bool Reaches(double value, double limit) => value >= limit - (Forgiven * limit);

    /// <summary>True when the value is more than the limit.</summary>
    public static bool Exceeds(double value, double limit) => value > limit + (Forgiven * limit);
}
