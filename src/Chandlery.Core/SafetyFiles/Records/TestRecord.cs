using Chandlery.Core.SafetyDataSheets;
using Chandlery.Core.SafetyFiles.Tests;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Records;

/// <summary>Burn tests as tables.</summary>
public static class TestRecord
{
    /// <summary>The blocks that tell of a candle's tests.</summary>
    public static IReadOnlyList<SheetBlock> Blocks(CandleTests tests) =>
        [.. Tested(tests), .. RecordSection.Texts(tests.Missing.Select(m => $"Missing: {m}"))];

    /// <summary>The same without what is missing, for a document that says so elsewhere.</summary>
    public static IReadOnlyList<SheetBlock> Tested(CandleTests tests) =>
        [
            new SheetText("Verdicts are by the maker's own limits: the limits of the standards are not at hand."),
            .. tests.Valid.SelectMany(t => Test(t, "")),
            .. tests.Outdated.SelectMany(t => Test(t.Test, t.Changed)),
            .. tests.Valid.Count + tests.Outdated.Count == 0 ? RecordSection.Texts(["None is declared."]) : [],
        ];

    private static IEnumerable<SheetBlock> Test(JudgedTest judged, string changed)
    {
        yield return new SheetText(
            $"{judged.Test.Id}, {IsoDay.Plain(judged.Test.On)}, {judged.Test.By}: {judged.Test.Samples.Count} samples, {judged.Verdict.ToString().ToLowerInvariant()}",
            Strong: true
        );
        if (changed.Length > 0)
        {
            yield return new SheetText($"Not of the candle as it is: {changed}.");
        }

        yield return new SheetTable(
            [34, 28, 24, 14],
            ["What", "Worst that was seen", "Own limit", "Holds"],
            [
                .. judged.Points.Select(p =>
                    new[]
                    {
                        CandleTests.Called(p.Subject),
                        p.Measured.Length == 0 ? "not measured" : p.Measured,
                        p.Limit.Length == 0 ? "none set" : p.Limit,
                        p.Holds switch
                        {
                            true => "yes",
                            false => "NO",
                            _ => "not known",
                        },
                    }
                ),
            ]
        );
        yield return BurnPlots.Of(judged.Test);
        yield return new SheetTable(
            [20, 12, 14, 14, 14, 13, 13],
            ["Sample, burn", "Hours", "Flame mm", "Pool mm", "Vessel °C", "Soot", "Relit"],
            [
                .. judged.Test.Samples.SelectMany(s =>
                    s.Burns.Select(
                        (b, i) =>
                            new[]
                            {
                                $"{s.Name}, {i + 1}",
                                Quantities(b.Hours),
                                Quantities(b.Flame?.Value),
                                Quantities(b.Pool?.Value),
                                Quantities(b.VesselHeat?.Value),
                                b.Soot?.ToString().ToLowerInvariant() ?? "-",
                                b.Relit switch
                                {
                                    true => "yes",
                                    false => "no",
                                    _ => "-",
                                },
                            }
                    )
                ),
            ]
        );
        if (judged.Test.Photographs.Count > 0)
        {
            yield return new SheetText($"Photographs: {string.Join(", ", judged.Test.Photographs)}");
        }
    }

    private static string Quantities(double? value) => value is { } figure ? Core.Quantities.Figures.Plain(figure) : "-";
}
