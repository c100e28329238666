using System.CommandLine;
using System.Text.Json;
using Chandlery.Cli.Answers;
using Chandlery.Core.Assessed;
using Chandlery.Core.Quantities;
using Chandlery.Files;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery arrange</c>: what fits where on the vessel.</summary>
internal static class ArrangeCommand
{
    public static Command Build()
    {
        var options = new CommonOptions(severalPaths: true);
        var paper = new PaperOptions();
        var command = new Command(
            "arrange",
            "Say which labels the vessel can carry, where, and whether the text fits: base, side, band, leaflet or tag."
        );
        options.AddTo(command);
        Option<bool> json = JsonOption.Of("arrange");
        command.Add(paper.Templates);
        command.Add(json);
        command.SetAction(parse =>
            Session.Print(
                parse,
                options,
                paper,
                (session, printer, assessments) =>
                {
                    var wrong = new List<Problem>();
                    var answers = new List<ArrangementAnswer>();
                    foreach (Assessment a in assessments)
                    {
                        var problems = new Problems();
                        if (LabelDocument.Arrange(a, printer.Shop, session.Lawbook.Burning, problems) is { } results && problems.None)
                        {
                            if (parse.GetValue(json))
                            {
                                answers.Add(
                                    new ArrangementAnswer(a.Id, a.Edition.Id, a.Vessel.Name, [.. results.Select(ArrangedLabel.Of)])
                                );
                                continue;
                            }

                            session.Output.WriteLine($"{a.Candle.Name} ({a.Edition.Id}), {a.Vessel.Name}, {a.Vessel.Brimful}");
                            session.Output.WriteLine(Table(results).Render(AssessCommand.Width, Ink.Output));
                        }

                        wrong.AddRange(problems.Found);
                    }

                    if (parse.GetValue(json))
                    {
                        session.Output.WriteLine(JsonSerializer.Serialize([.. answers], AnswerJson.Plain.ArrangementAnswerArray));
                    }

                    return session.Close(new FolderReport([.. wrong.Distinct()], []), ExitCode.Fine);
                }
            )
        );
        return command;
    }

    private static TextTable Table(IReadOnlyList<ArrangementResult> results)
    {
        var table = new TextTable("", "Label", "Where", "Holds the law's size", "Letters", "Result");
        ArrangementResult? first = results.FirstOrDefault(r => r.Fitted is not null);
        foreach (ArrangementResult r in results)
        {
            table.Add(
                r == first ? "->" : "",
                r.Shape.Request.ToString(),
                r.Shape.Where,
                r.HoldsLegalSize ? "yes" : "no",
                r.Fitted is { } f ? $"{Figures.Plain(f.XHeight.Value)} mm" : "-",
                r.Fitted is not null
                    ? r.Fitted.Notes.Count == 0
                        ? "fits"
                        : $"fits; {string.Join("; ", r.Fitted.Notes)}"
                    : $"does not fit: {Figures.Plain(r.Missing!.MissingHeight.Value)} mm of height are missing"
            );
        }

        return table;
    }
}
