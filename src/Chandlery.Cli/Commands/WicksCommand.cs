using System.CommandLine;
using System.Text.Json;
using Chandlery.Core.Assessed;
using Chandlery.Core.Making;
using Chandlery.Core.Making.Layouts;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.WickTemplates;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery wicks</c>: where the wicks stand, and a template of true size.</summary>
internal static class WicksCommand
{
    public static Command Build(PaperList papers)
    {
        var options = new CommonOptions(severalPaths: true);
        var paper = new PaperOptions();
        var count = new Option<int?>("--count")
        {
            Description = "How many wicks to lay out. Default: as many as the candle declares.",
            CustomParser = result => Numbers.Whole("--count", 1, LayoutFinder.MostWicks)(result),
        };
        Option<bool> json = JsonOption.BesidePapers("wicks");
        var command = new Command(
            "wicks",
            "Lay out the wicks with the greatest free circle around each, hold their spacing against the wick maker's, and print a template of true size."
        );
        options.AddTo(command);
        paper.AddTo(command);
        command.Add(count);
        command.Add(json);
        command.SetAction(parse =>
            Session.Print(
                parse,
                options,
                paper,
                (session, printer, assessments) =>
                {
                    List<(Assessment Candle, WickPlan Plan)> plans =
                    [
                        .. session
                            .EachCandle(assessments)
                            .Select(a =>
                                (a, WickPlan.Of(a.Candle.Wicks with { Count = parse.GetValue(count) ?? a.Candle.Wicks.Count }, a.Vessel))
                            ),
                    ];
                    if (parse.GetValue(json))
                    {
                        WickLine[] lines = [.. plans.Select(p => WickLine.Of(p.Candle.Candle, p.Plan))];
                        session.Output.WriteLine(JsonSerializer.Serialize(lines, MakingJson.Plain.WickLineArray));
                    }
                    else
                    {
                        plans.ForEach(p => Tell(session, p.Candle, p.Plan));
                    }

                    if (!paper.IsWanted(parse))
                    {
                        return ExitCode.Fine;
                    }

                    List<Assessment> candles = [.. plans.Select(p => p.Candle)];
                    var run = new PaperRun(session, printer, candles, new PaperSettings(Wicks: parse.GetValue(count)));
                    run.MakeAll([.. papers.All.OfType<WickTemplatePaper>()]);
                    return run.Finish();
                }
            )
        );
        return command;
    }

    private static void Tell(Session session, Assessment a, WickPlan plan)
    {
        session.WriteWrapped($"{a.Candle.Name}, {a.Vessel.Name}: {plan.Note}");
        if (plan is { Symmetric: { Neighbours: { } apart } rings, IsSymmetricBest: false })
        {
            string how =
                a.Vessel.Inner?.Section is Core.Declared.RoundSection
                    ? $"rings of {string.Join(" and ", RingLayout.Rings(rings))}"
                    : "even rows";
            session.WriteWrapped($"  symmetric, in {how}: {apart.InCentimetres} apart and {rings.Wall.InCentimetres} from the wall.");
        }
    }
}
