using Chandlery.Core.Declared;
using Chandlery.Core.Law.ProductSafety;

namespace Chandlery.Core.Assessed;

/// <summary>What came of weighing a batch.</summary>
/// <param name="Weighing">The weighing.</param>
/// <param name="NominalGrams">What stands on the label, grams.</param>
/// <param name="MeanGrams">Mean contents, grams.</param>
/// <param name="ToleranceGrams">How much one package may fall short; null where the law has no row for this quantity.</param>
/// <param name="Short">How many fall short by more than the tolerance.</param>
/// <param name="FarShort">How many fall short by more than the law ever allows.</param>
/// <param name="Passes">Whether the e-mark may stand on them; null where it cannot be told.</param>
public sealed record WeighingVerdict(
    Weighing Weighing,
    double NominalGrams,
    double MeanGrams,
    double? ToleranceGrams,
    int Short,
    int FarShort,
    bool? Passes
)
{
    // A balance shows hundredths of a gram at best: less than this is the computer's own rounding.
    private const double RoundingGrams = 1e-6;

    /// <summary>The verdict of the law on a weighing.</summary>
    /// <param name="weighing">What was weighed.</param>
    /// <param name="candle">The candle of the batch.</param>
    /// <param name="rules">The law's tolerances.</param>
    public static WeighingVerdict Of(Weighing weighing, Candle candle, QuantityRules rules)
    {
        double nominal = candle.NetMass.Value;
        List<double> contents = [.. weighing.Gross.Select(g => g.Value - weighing.Tare.Value)];
        double mean = contents.Average();
        if (rules.RowFor(nominal)?.Of(nominal) is not { } tolerance)
        {
            return new WeighingVerdict(weighing, nominal, mean, null, 0, 0, null);
        }

        int tooLight = contents.Count(c => c < nominal - tolerance - RoundingGrams);
        int farTooLight = contents.Count(c => c < nominal - (rules.Times * tolerance) - RoundingGrams);
        bool passes = mean >= nominal - RoundingGrams && farTooLight == 0 && tooLight * 100 <= rules.SharePercent * contents.Count;
        return new WeighingVerdict(weighing, nominal, mean, tolerance, tooLight, farTooLight, passes);
    }
}
