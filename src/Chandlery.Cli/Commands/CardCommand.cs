using System.CommandLine;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Cards;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery card</c>: the burn-safety card.</summary>
internal static class CardCommand
{
    public static Command Build(PaperList papers)
    {
        var options = new CommonOptions(severalPaths: true);
        var paper = new PaperOptions();
        var command = new Command(
            "card",
            "Print the burn-safety card that goes to the buyer or the shop with the candle, a page for each language."
        );
        List<CardPaper> cards = [.. papers.All.OfType<CardPaper>()];
        var kind = new Option<string>("--kind")
        {
            Description = $"{string.Join("; ", cards.Select(c => $"{c.Choice} ({c.About})"))}. Default: {cards[0].Choice}.",
            DefaultValueFactory = _ => cards[0].Choice,
            CustomParser = result =>
            {
                string chosen = result.Tokens[0].Value;
                CardPaper? card = cards.Find(c => c.Choice.Equals(chosen, StringComparison.OrdinalIgnoreCase));
                if (card is null)
                {
                    result.AddError($"'{chosen}' is no card: write {string.Join(" or ", cards.Select(c => c.Choice))}.");
                }

                return card?.Choice ?? chosen;
            },
        };
        kind.CompletionSources.Add([.. cards.Select(c => c.Choice)]);
        command.Add(kind);
        options.AddTo(command);
        paper.AddTo(command);
        command.SetAction(parse =>
            Session.Print(
                parse,
                options,
                paper,
                (session, printer, assessments) =>
                {
                    var run = new PaperRun(session, printer, assessments, new PaperSettings());
                    run.MakeAll([.. cards.Where(c => c.Choice == parse.GetValue(kind))]);
                    return run.Finish();
                }
            )
        );
        return command;
    }
}
