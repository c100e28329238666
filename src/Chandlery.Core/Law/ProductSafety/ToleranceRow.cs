namespace Chandlery.Core.Law.ProductSafety;

/// <summary>How much a package may fall short of its nominal quantity, in a range of nominal quantities.</summary>
/// <param name="AboveGrams">The range begins above this, except the first, which begins with it.</param>
/// <param name="UpToGrams">The range ends with this.</param>
/// <param name="Percent">Percent of the nominal quantity; null where grams are given.</param>
/// <param name="Grams">Grams; null where percent are given.</param>
public sealed record ToleranceRow(double AboveGrams, double UpToGrams, double? Percent, double? Grams)
{
    /// <summary>The tolerance for a nominal quantity, grams.</summary>
    public double Of(double nominalGrams) => Grams ?? (nominalGrams * Percent!.Value / 100);
}
