using System.CommandLine;
using System.Text.Json;
using Chandlery.Core.Declared;
using Chandlery.Core.SafetyFiles;
using Chandlery.Core.SafetyFiles.Records;
using Chandlery.Core.SafetyFiles.Tests;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery tests</c>: burn tests with their verdicts, and which are missing.</summary>
internal static class TestsCommand
{
    public static Command Build()
    {
        Option<bool> json = JsonOption.Of("tests");
        Option<string?> into = KeptFolder.Out();
        return KeptFolder.Build(
            "tests",
            "List burn tests with their verdicts by your own limits, and say which are missing for each candle as it is: a new wick, vessel or wax, or more oil, is tested again.",
            (folder, parse) => Run(folder, parse.GetValue(json), parse.GetValue(into)),
            json,
            into
        );
    }

    private static int Run(KeptFolder folder, bool json, string? into)
    {
        List<CandleTests> all =
        [
            .. folder
                .Catalogue.OfKind<Candle>()
                .Where(c => folder.Kinds.Of(c).Burns)
                .Select(c => CandleTests.Of(c, folder.Catalogue, folder.Lawbook.Safety.File.Value)),
        ];
        var table = new TextTable("candle", "test", "day", "samples", "verdict", "what is missing");
        foreach (CandleTests tests in all)
        {
            foreach ((JudgedTest test, string changed) in tests.Valid.Select(t => (t, "")).Concat(tests.Outdated))
            {
                table.Add(
                    tests.Candle.Id,
                    test.Test.Id,
                    IsoDay.Plain(test.Test.On),
                    $"{test.Test.Samples.Count}",
                    test.Verdict.ToString().ToLowerInvariant(),
                    changed.Length > 0 ? $"not of the candle as it is: {changed}" : ""
                );
            }

            foreach (string missing in tests.Missing)
            {
                table.Add(tests.Candle.Id, "-", "-", "-", "-", missing);
            }
        }

        folder.Print(json, JsonSerializer.Serialize([.. all.Select(TestReport.Of)], SafetyFileJson.Plain.TestReportArray), table);
        folder.Write(
            new KeptRecord(
                "Burn tests",
                folder.MakerName,
                [$"As of {IsoDay.Plain(folder.AsOf)}."],
                [.. all.Select(t => new RecordSection(t.Candle.Name, TestRecord.Blocks(t)))]
            ),
            "burn-tests",
            into
        );
        return all.TrueForAll(t => t.IsDone) ? ExitCode.Fine : ExitCode.StopsSale;
    }
}
