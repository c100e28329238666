using Chandlery.Core.Assessed;
using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyFiles.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Records;

/// <summary>The record of weighings, which goes with the e-mark.</summary>
public static class WeighingRecord
{
    /// <summary>The record.</summary>
    /// <param name="maker">Whose it is.</param>
    /// <param name="verdicts">Weighings with the codes of their batches.</param>
    /// <param name="clause">Where the rule stands.</param>
    public static KeptRecord Of(string maker, IReadOnlyList<(WeighingVerdict Verdict, string Batch)> verdicts, string clause) =>
        new(
            "Record of weighings",
            maker,
            [$"By {clause}. The verdict is on the packages that were weighed."],
            [
                .. verdicts.Select(v => new RecordSection(
                    $"{v.Batch}: {v.Verdict.Weighing.Id}",
                    [
                        RecordSection.Pairs(
                            ("Weighed", $"{IsoDay.Plain(v.Verdict.Weighing.On)}, {v.Verdict.Weighing.By}"),
                            ("On the label", Grams(v.Verdict.NominalGrams)),
                            ("Empty package", v.Verdict.Weighing.Tare.ToString()),
                            (
                                "Contents",
                                string.Join("; ", v.Verdict.Weighing.Gross.Select(g => Grams(g.Value - v.Verdict.Weighing.Tare.Value)))
                            ),
                            ("Mean", Grams(v.Verdict.MeanGrams)),
                            ("Tolerance", v.Verdict.ToleranceGrams is { } t ? Grams(t) : "none known"),
                            ("Short by more than it", $"{v.Verdict.Short} of {v.Verdict.Weighing.Gross.Count}"),
                            ("Short beyond all", $"{v.Verdict.FarShort}"),
                            ("Verdict", WeighingLine.Of(v.Verdict, v.Batch).Verdict)
                        ),
                    ]
                )),
            ]
        );

    private static string Grams(double value) => $"{Figures.Rounded(value, 2)} g";
}
