using System.CommandLine;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery label</c>: the label at its exact size.</summary>
internal static class LabelCommand
{
    public static Command Build()
    {
        var options = new CommonOptions();
        var paper = new PaperOptions();
        var command = new Command(
            "label",
            "Print the label at its exact size, with the largest text that fits and never less than the law allows."
        );
        var proof = new Option<bool>("--proof")
        {
            Description = "Also write a proof page: the label at true size with rulers and every legal value, measured from its PDF.",
        };
        command.Add(proof);
        options.AddTo(command);
        paper.AddTo(command);
        command.SetAction(parse =>
            Session.Print(
                parse,
                options,
                paper,
                (session, printer, assessments, problems) =>
                {
                    var labels = assessments.Select(a => printer.Label(a, problems, parse.GetValue(proof))).ToList();
                    if (!problems.None)
                    {
                        return session.Report(problems);
                    }

                    printer.Write(labels.SelectMany(l => l.Files), "", session.Output);
                    List<string> reasons = [.. labels.Select(l => l.WhyNot).OfType<string>()];
                    reasons.ForEach(session.Complain);
                    return reasons.Count > 0 ? ExitCode.StopsSale : ExitCode.Fine;
                }
            )
        );
        return command;
    }
}
