using Chandlery.Core.Assessed;

namespace Chandlery.Core.SafetyFiles.Quantities;

/// <summary>A weighing for programs.</summary>
/// <param name="Weighing">File name without its ending; null for a batch with the e-mark that was not weighed.</param>
/// <param name="Batch">Batch code.</param>
/// <param name="Packages">How many were weighed.</param>
/// <param name="NominalGrams">What stands on the label, grams.</param>
/// <param name="MeanGrams">Mean contents, grams; null when not weighed.</param>
/// <param name="ToleranceGrams">How much one may fall short; null when the law has no row.</param>
/// <param name="Verdict">The verdict in words.</param>
public sealed record WeighingLine(
    string? Weighing,
    string Batch,
    int Packages,
    double NominalGrams,
    double? MeanGrams,
    double? ToleranceGrams,
    string Verdict
)
{
    /// <summary>The line of a verdict.</summary>
    public static WeighingLine Of(WeighingVerdict v, string batchCode) =>
        new(
            v.Weighing.Id,
            batchCode,
            v.Weighing.Gross.Count,
            v.NominalGrams,
            v.MeanGrams,
            v.ToleranceGrams,
            v.Passes switch
            {
                null => "no tolerance is known for this quantity, so nothing can be said and the e-mark may not be used",
                true => "passes: the e-mark may be used on this batch",
                _ => $"fails: {Why(v)}; the e-mark may not be used on this batch",
            }
        );

    private static string Why(WeighingVerdict v) =>
        string.Join(
            ", ",
            new[]
            {
                v.FarShort > 0 ? $"{v.FarShort} fall short by more than is ever allowed" : "",
                v.Short > v.FarShort ? $"{v.Short - v.FarShort} fall short by more than the tolerance" : "",
                v.MeanGrams < v.NominalGrams ? "the mean is below what the label says" : "",
            }.Where(s => s.Length > 0)
        );
}
