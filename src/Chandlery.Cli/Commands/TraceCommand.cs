using System.CommandLine;
using System.Text.Json;
using Chandlery.Cli.Answers;
using Chandlery.Core.Assessed;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery trace</c>: the working of one result.</summary>
internal static class TraceCommand
{
    public static Command Build()
    {
        var options = new CommonOptions();
        var result = new Argument<string>("result")
        {
            Description =
                "What to explain: a class ('Skin Sens.'), a statement (H317, EUH208, P501), a pictogram (GHS07), a signal word, part of a limit's name, a substance or its CAS number, or 'load'.",
        };
        var command = new Command("trace", "Explain one result: in plain sentences, then with inputs, formula, threshold and clause.");
        options.AddTo(command);
        Option<bool> json = JsonOption.Of("trace");
        command.Add(result);
        command.Add(json);
        command.SetAction(parse =>
            Session.Run(
                parse,
                options,
                (session, assessments) => Trace(session, assessments, parse.GetValue(result)!, parse.GetValue(json))
            )
        );
        return command;
    }

    private static int Trace(Session session, IReadOnlyList<Assessment> assessments, string asked, bool json)
    {
        bool found = false;
        var answers = new List<TraceAnswer>();
        foreach (Assessment assessment in assessments)
        {
            if (Tracer.Explain(assessment, asked) is not { } text)
            {
                continue;
            }

            found = true;
            if (json)
            {
                answers.Add(
                    new TraceAnswer(assessment.Id, assessment.Edition.Id, asked, [.. text.ReplaceLineEndings("\n").TrimEnd().Split('\n')])
                );
                continue;
            }

            if (assessments.Count > 1)
            {
                session.Output.WriteLine($"== {assessment.Id} ({assessment.Edition.Id})");
            }

            session.Output.WriteLine(text);
        }

        if (found)
        {
            if (json)
            {
                session.Output.WriteLine(JsonSerializer.Serialize([.. answers], AnswerJson.Plain.TraceAnswerArray));
            }

            return ExitCode.Fine;
        }

        List<string> askable = [.. assessments.SelectMany(Tracer.Askable).Distinct()];
        string near = Suggestion.Nearest(asked, askable) is { } guess ? $" Did you mean '{guess}'?" : "";
        session.Complain($"Nothing here answers to '{asked}'.{near}");
        session.Complain($"You can ask for: {string.Join("; ", askable)}.");
        return ExitCode.BadInput;
    }
}
