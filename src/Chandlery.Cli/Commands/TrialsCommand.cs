using System.CommandLine;
using System.Text.Json;
using Chandlery.Core.Asked.Trials;
using Chandlery.Core.Declared;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery trials</c>: blends tried by nose, and what a candle of each would be.</summary>
internal static class TrialsCommand
{
    public static Command Build()
    {
        Option<bool> json = JsonOption.Of("trials");
        var setting = new TrialOptions();
        return KeptFolder.Build(
            "trials",
            "List the blends that were tried by nose, best liked first, and say what a candle of each would be in a wax, at a load and place.",
            (folder, parse) => Run(folder, setting.Read(folder, parse), parse.GetValue(json)),
            [.. setting.All, json]
        );
    }

    private static int Run(KeptFolder folder, TrialSetting? setting, bool json)
    {
        if (setting is null)
        {
            return ExitCode.BadInput;
        }

        var assessor = new TrialAssessor(folder.Lawbook, folder.Catalogue, folder.AsOf);
        List<TrialVerdict> verdicts =
        [
            .. folder
                .Catalogue.OfKind<Trial>()
                .OrderByDescending(t => t.Stars ?? 0)
                .ThenByDescending(t => t.On)
                .ThenBy(t => t.Id, StringComparer.Ordinal)
                .SelectMany(t => setting.QuestionFor(t, folder) is { } asked ? assessor.Assess(t, asked, folder.Problems) : []),
        ];
        List<TrialLine> lines = [.. verdicts.Select(TrialLine.Of)];
        folder.Print(
            json,
            JsonSerializer.Serialize([.. lines], TrialJson.Plain.TrialLineArray),
            Table(lines),
            folder.Catalogue.OfKind<Trial>().Any() ? null : "trial"
        );
        if (!json)
        {
            foreach (TrialLine line in lines.DistinctBy(l => l.Id))
            {
                folder.Session.Output.WriteLine();
                Describe(folder, line, [.. lines.Where(l => l.Id == line.Id)]);
            }
        }

        return verdicts.Exists(v => v.Stops.Count > 0) ? ExitCode.StopsSale : ExitCode.Fine;
    }

    private static TextTable Table(List<TrialLine> lines)
    {
        var table = new TextTable("trial", "stars", "load", "law", "classes", "statements", "verdict");
        foreach (TrialLine l in lines)
        {
            table.Add(
                l.Id,
                l.Stars is { } stars ? $"{stars}" : "-",
                l.Load,
                l.Edition,
                l.Classes.Count == 0 ? "-" : string.Join(", ", l.Classes),
                l.Statements.Count == 0 ? "-" : string.Join(", ", l.Statements),
                Verdict(l)
            );
        }

        return table;
    }

    private static string Verdict(TrialLine l)
    {
        string open = l.NotChecked.Count + l.Unassessed.Count > 0 ? "; not all could be checked" : "";
        return (l.Stops.Count > 0 ? "would be stopped" : "nothing in it stops a sale") + open;
    }

    private static void Describe(KeptFolder folder, TrialLine first, List<TrialLine> lines)
    {
        folder.Session.WriteWrapped($"{first.Id}: {first.Name}, {first.On}, in {first.Wax}: {string.Join(", ", first.Blend)}");
        if (first.Smells is { } smells)
        {
            folder.Session.WriteWrapped($"  smells: {smells}");
        }

        foreach (string stop in lines.SelectMany(l => l.Stops).Distinct())
        {
            folder.Session.WriteWrapped($"  stops: {stop}");
        }

        foreach (string open in lines.SelectMany(l => l.NotChecked.Concat(l.Unassessed)).Distinct())
        {
            folder.Session.WriteWrapped($"  not known: {open}");
        }
    }
}
