using System.CommandLine;
using System.Text.Json;
using Chandlery.Core.Asked.Trials;
using Chandlery.Core.Declared;
using Chandlery.Core.Making.Stores;
using Chandlery.Core.Quantities;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery blend</c>: how far a trial can go, and the nearest blend, under what is asked of it.</summary>
internal static class BlendCommand
{
    private static readonly (string Word, TrialAim Aim)[] Words =
    [
        ("sale", TrialAim.Sale),
        ("no-class", TrialAim.NoClass),
        ("no-euh208", TrialAim.NoSensitiser),
        ("ifra", TrialAim.Ifra),
    ];

    private const double MostMoney = 1_000_000;

    public static Command Build()
    {
        Option<bool> json = JsonOption.Of("blend");
        var setting = new TrialOptions();
        var trial = new Option<string>("--trial") { Description = "The trial to begin with (file name without .yaml).", Required = true };
        var keep = new Option<string[]>("--keep")
        {
            Description =
                "What the blend shall keep to: sale (nothing stops it), no-class, no-euh208 (no sensitiser to name), ifra. May be given several times. Limits of wax and oils are always kept.",
            AllowMultipleArgumentsPerToken = true,
        };
        keep.AcceptOnlyFromAmong([.. Words.Select(w => w.Word)]);
        var also = new Option<string[]>("--also")
        {
            Description = "Oils that may be mixed in beside the trial's own (file names without .yaml).",
            AllowMultipleArgumentsPerToken = true,
        };
        var cost = new Option<double?>("--oil-cost")
        {
            Description = "The most that the oil of a kilogram of candle may cost, by your newest lots, in your currency.",
            CustomParser = result => Numbers.Decimal("--oil-cost", 0, MostMoney)(result),
        };
        return KeptFolder.Build(
            "blend",
            "Find the largest load of a trial's blend, and the nearest blend at its load, that keep to what you ask. Loads are solved exactly; of blends it is said whether a nearer one was ruled out.",
            (folder, parse) =>
                setting.Read(folder, parse) is { } read
                && folder.Find<Trial>(parse.GetValue(trial)!, "--trial") is { } found
                && read.QuestionFor(found, folder) is { } question
                && Oils(folder, parse.GetValue(also) ?? []) is { } oils
                    ? Run(
                        folder,
                        found,
                        question,
                        new TrialAims(Aims(parse.GetValue(keep)), Bound(folder, parse.GetValue(cost))),
                        oils,
                        parse.GetValue(json)
                    )
                    : ExitCode.BadInput,
            [trial, keep, also, cost, .. setting.All, json]
        );
    }

    private static List<TrialAim> Aims(string[]? words) =>
        words is not { Length: > 0 } ? [TrialAim.Sale] : [.. Words.Where(w => words.Contains(w.Word)).Select(w => w.Aim)];

    private static CostBound? Bound(KeptFolder folder, double? most) =>
        most is { } money ? new CostBound(new Prices(folder.Catalogue, folder.AsOf).OilsPerGram(), money) : null;

    private static List<Oil>? Oils(KeptFolder folder, string[] ids)
    {
        List<Oil?> found = [.. ids.Select(id => folder.Find<Oil>(id, "--also"))];
        return found.Contains(null) ? null : [.. found.OfType<Oil>()];
    }

    private static int Run(KeptFolder folder, Trial trial, TrialQuestion question, TrialAims aims, List<Oil> also, bool json)
    {
        IReadOnlyList<TrialSolution> solutions = new TrialAssessor(folder.Lawbook, folder.Catalogue, folder.AsOf).Solve(
            trial,
            question,
            aims,
            also,
            folder.Problems
        );
        if (json)
        {
            BlendLine[] lines = [.. solutions.Select(BlendLine.Of)];
            folder.Session.Output.WriteLine(JsonSerializer.Serialize(lines, TrialJson.Plain.BlendLineArray));
            return ExitCode.Fine;
        }

        foreach (TrialSolution s in solutions)
        {
            Tell(folder, trial, question, s);
        }

        return ExitCode.Fine;
    }

    private static void Tell(KeptFolder folder, Trial trial, TrialQuestion question, TrialSolution s)
    {
        folder.Session.WriteWrapped(
            $"{trial.Name}, {question.Load} of {question.Wax.Name}, for {string.Join(", ", s.Places.Select(p => p.Code))} ({s.Edition.Id})"
        );
        foreach (string missed in s.MissedNow)
        {
            folder.Session.WriteWrapped($"  not kept now: {missed}");
        }

        if (s.MissedNow.Count == 0)
        {
            folder.Session.WriteWrapped("  As it is it keeps to everything that you asked.");
        }

        folder.Session.WriteWrapped(
            s.LargestLoad is { } load ? $"  largest load of this blend: {Figures.Plain(load.Load.Percent.Value)} % of the wax{Beyond(load)}"
            : question.Wax.HighestLoad is null ? $"  largest load: not known, because {question.Wax.Name} declares no highest load."
            : "  largest load: none, however small, keeps to it."
        );
        if (s.MissedNow.Count > 0)
        {
            folder.Session.WriteWrapped(
                s.Nearest is { } near
                    ? $"  nearest blend at this load, {Figures.Plain(near.MovedPercent)} % of the blend exchanged: {string.Join(", ", TrialLine.BlendOf(near.Recipe))}"
                : s.IsNearestProven
                    ? "  nearest blend: no blend of these oils keeps to it at this load; try less, or other oils with --also."
                : "  nearest blend: none was found at this load; try less, or other oils with --also."
            );
            if (!s.IsNearestProven)
            {
                folder.Session.WriteWrapped("  There may be a nearer one: not all blends could be looked at.");
            }
            else if (s.Nearest is not null)
            {
                folder.Session.WriteWrapped("  Shown: no blend in hundredths of a percent is nearer.");
            }
        }

        foreach (string open in (s.Nearest ?? s.LargestLoad)?.Verdict.Unassessed ?? [])
        {
            folder.Session.WriteWrapped($"  not known: {open}");
        }

        folder.Session.Output.WriteLine();
    }

    private static string Beyond(TrialAnswer answer) => answer.Beyond.Count > 0 ? $". Beyond it: {answer.Beyond[0]}" : ".";
}
