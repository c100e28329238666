using System.CommandLine;
using System.Text;
using System.Text.Json;
using Chandlery.Cli.Answers;
using Chandlery.Core.Asked.Ceilings;
using Chandlery.Core.Assessed;
using Chandlery.Core.Composed;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers.LoadPlots;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery ceiling</c>: the highest load before each consequence.</summary>
internal static class CeilingCommand
{
    private const double PlotDpi = 200;

    public static Command Build()
    {
        var options = new CommonOptions(severalPaths: true);
        var oil = new Option<string?>("--oil")
        {
            Description = "Vary the load of this oil only (file name without .yaml); the others stay.",
        };
        var share = new Option<string?>("--share") { Description = "Vary this oil's share of the blend; the load stays." };
        var plot = new Option<string?>("--plot") { Description = "Also draw load against consequences into this file, .svg or .png." };
        var command = new Command(
            "ceiling",
            "Say how far the load can go before each consequence: a class, EUH208, another signal word, a broken limit. Solved exactly."
        );
        options.AddTo(command);
        command.Add(oil);
        command.Add(share);
        Option<bool> json = JsonOption.Of("ceiling");
        command.Add(plot);
        command.Add(json);
        command.SetAction(parse =>
            Session.Run(
                parse,
                options,
                (session, assessments) =>
                    Run(session, assessments, parse.GetValue(oil), parse.GetValue(share), parse.GetValue(plot), parse.GetValue(json))
            )
        );
        return command;
    }

    private static int Run(Session session, IReadOnlyList<Assessment> assessments, string? oil, string? share, string? plot, bool json)
    {
        if (oil is not null && share is not null)
        {
            session.Complain("--oil and --share ask for two different things: give one of them.");
            return ExitCode.BadInput;
        }

        if (plot is not null && (assessments.Count != 1 || Path.GetExtension(plot) is not (".svg" or ".png")))
        {
            session.Complain("--plot needs one candle under one edition of the law, and a file that ends in .svg or .png.");
            return ExitCode.BadInput;
        }

        var answers = new List<CeilingAnswer>();
        foreach (Assessment a in assessments)
        {
            if (a.Composition.Recipe.Oils.Count == 0)
            {
                session.Complain($"{a.Id} holds no oil, so there is nothing to vary.");
                continue;
            }

            string? which = oil ?? share;
            if (which is not null && a.Composition.Recipe.Oils.All(o => o.Oil.Id != which))
            {
                session.Complain(
                    $"{a.Id} holds no oil '{which}'. It holds: {string.Join(", ", a.Composition.Recipe.Oils.Select(o => o.Oil.Id))}."
                );
                return ExitCode.BadInput;
            }

            Varied varied =
                oil is not null ? Varied.OneOil
                : share is not null ? Varied.BlendShare
                : Varied.Load;
            var finder = new CeilingFinder(a, session.WaxOf(a), varied, which);
            IReadOnlyList<Ceiling> ceilings = finder.Find();
            if (json)
            {
                answers.Add(Answer(a, varied, which, finder.Now, ceilings));
            }
            else
            {
                session.Output.WriteLine(Render(a, varied, which, finder.Now, ceilings));
            }

            if (plot is not null)
            {
                Scene scene = CeilingPlot.Draw(a, varied, finder.Now, ceilings);
                byte[] bytes = plot.EndsWith(".svg", StringComparison.Ordinal)
                    ? Encoding.UTF8.GetBytes(SvgDrawing.Draw(scene, $"{a.Candle.Name}: load and consequences"))
                    : PngDrawing.Draw(scene, PlotDpi);
                AtomicFile.Write(plot, bytes);
                if (!json)
                {
                    session.Output.WriteLine(plot);
                }
            }
        }

        if (json)
        {
            session.Output.WriteLine(JsonSerializer.Serialize([.. answers], AnswerJson.Plain.CeilingAnswerArray));
        }

        return ExitCode.Fine;
    }

    private static CeilingAnswer Answer(Assessment a, Varied varied, string? which, double now, IReadOnlyList<Ceiling> ceilings)
    {
        Recipe r = a.Composition.Recipe;
        return new CeilingAnswer(
            a.Id,
            a.Edition.Id,
            EnumName.Of(varied),
            which,
            new LoadFigures(
                varied == Varied.Load ? r.MeltLoadOfWax.Value : 100 * now,
                r.MeltLoadOfWax.Value,
                r.MeltLoadOfCandle.Value,
                r.Load.Value
            ),
            [.. ceilings.Select(c => CeilingStep.Of(c, varied))]
        );
    }

    private static string Render(Assessment a, Varied varied, string? which, double now, IReadOnlyList<Ceiling> ceilings)
    {
        var text = new StringBuilder();
        string title = varied switch
        {
            Varied.Load => $"{a.Candle.Name} ({a.Edition.Id}): highest load before each consequence",
            Varied.OneOil => $"{a.Candle.Name} ({a.Edition.Id}): highest load of {which}, the other oils staying",
            _ => $"{a.Candle.Name} ({a.Edition.Id}): highest share of {which} in the blend, the load staying",
        };
        text.AppendLine(title).AppendLine(new string('-', title.Length));
        string first = varied switch
        {
            Varied.BlendShare => "share of blend",
            Varied.OneOil => "this oil, % of melt",
            _ => "% of wax",
        };
        var table = new TextTable(
            a.Kind.SayOfParts(first),
            a.Kind.SayOfParts("% of wax, all oils"),
            a.Kind.SayOfParts("% of melt"),
            a.Kind.SayOfParts("% of candle"),
            "Set by",
            "From there on"
        );
        bool marked = false;
        foreach (Ceiling c in ceilings)
        {
            if (!marked && c.Fraction > now)
            {
                AddNow(table, a, varied, now);
                marked = true;
            }

            foreach (Consequence consequence in c.Consequences)
            {
                string figure = varied == Varied.Load ? Percent(c.OfWax.Value) : Percent(c.Varied.Value);
                table.Add(
                    figure,
                    Percent(c.OfWax.Value),
                    Percent(c.OfMelt.Value),
                    Percent(c.OfCandle.Value),
                    consequence.SetBy,
                    $"{consequence.What} {(consequence.Begins ? "begins" : "ends")} [{consequence.Clause}]"
                );
            }
        }

        if (!marked)
        {
            AddNow(table, a, varied, now);
        }

        text.Append(table.Render(AssessCommand.Width, Ink.Output));
        if (a.Kind.State == PhysicalState.Liquid)
        {
            text.AppendLine(
                "The flash point is that of the liquid as it is declared: with another share of oil it must be measured again."
            );
        }

        return text.ToString();
    }

    // The present load in the measure of each column, so that nobody compares percent of melt with percent of wax.
    private static void AddNow(TextTable table, Assessment a, Varied varied, double now)
    {
        Recipe recipe = a.Composition.Recipe;
        table.Add(
            "now: " + Percent(varied == Varied.Load ? recipe.MeltLoadOfWax.Value : 100 * now),
            Percent(recipe.MeltLoadOfWax.Value),
            Percent(recipe.MeltLoadOfCandle.Value),
            Percent(recipe.Load.Value),
            "",
            a.Kind.SayOfParts("the candle as it is declared")
        );
    }

    private static string Percent(double value) => Figures.Plain(value);
}
