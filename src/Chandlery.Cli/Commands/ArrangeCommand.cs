using System.CommandLine;
using System.Diagnostics;
using System.Text.Json;
using Chandlery.Cli.Answers;
using Chandlery.Core.Assessed;
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
        LabelAttempt? first = results.FirstOrDefault(r => r.Attempt is FittedLabel)?.Attempt;
        foreach ((LabelAttempt attempt, bool holdsLegalSize) in results)
        {
            table.Add(
                attempt == first ? "->" : "",
                attempt.Shape.Request.ToString(),
                attempt.Shape.Where,
                holdsLegalSize ? "yes" : "no",
                attempt.Fitted?.XHeight.ToString() ?? "-",
                attempt switch
                {
                    FittedLabel { Notes.Count: 0 } => "fits",
                    FittedLabel fitted => $"fits; {string.Join("; ", fitted.Notes)}",
                    Misfit misfit => $"does not fit: {misfit.MissingHeight} of height are missing",
                    _ => throw new UnreachableException(),
                }
            );
        }

        return table;
    }
}
