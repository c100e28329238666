using System.CommandLine;
using Chandlery.Paper.Papers.Cards;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery card</c>: the burn-safety card.</summary>
internal static class CardCommand
{
    public static Command Build()
    {
        var options = new CommonOptions();
        var paper = new PaperOptions();
        var command = new Command(
            "card",
            "Print the burn-safety card that goes to the buyer or the shop with the candle, a page for each language."
        );
        var kind = new Option<CardKind>("--kind")
        {
            Description =
                "buyer (A6, default), pocket (A7) or shop (A5: what to tell customers, what is in it, how to store it, whom to ask).",
            DefaultValueFactory = _ => CardKind.Buyer,
        };
        command.Add(kind);
        options.AddTo(command);
        paper.AddTo(command);
        command.SetAction(parse =>
            Session.Print(
                parse,
                options,
                paper,
                (session, printer, assessments, problems) =>
                {
                    List<PendingFile> files = [.. assessments.SelectMany(a => printer.Card(a, parse.GetValue(kind), problems))];
                    if (!problems.None)
                    {
                        return session.Report(problems);
                    }

                    printer.Write(files, "", session.Output);
                    return ExitCode.Fine;
                }
            )
        );
        return command;
    }
}
