using System.CommandLine;
using System.Text.Json;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Making.Stores;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Papers;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery cost</c>: what a candle costs, and its price by the maker's own rates.</summary>
internal static class CostCommand
{
    public static Command Build()
    {
        var options = new CommonOptions(severalPaths: true);
        Option<bool> json = JsonOption.Of("cost");
        var waste = new Option<double>("--waste")
        {
            Description = $"What of the melt stays in the jug, percent (0 to 50). Default: {PaperSettings.UsualWastePercent}.",
            CustomParser = Numbers.Decimal("--waste", 0, 50),
            DefaultValueFactory = _ => PaperSettings.UsualWastePercent,
        };
        var command = new Command(
            "cost",
            "Say what a candle costs by your newest lots: wax, oils, vessel, wick, packaging and minutes; and its price with the margin and tax that you declare. No accounting."
        );
        options.AddTo(command);
        command.Add(waste);
        command.Add(json);
        command.SetAction(parse =>
            Session.Run(
                parse,
                options,
                (session, assessments) =>
                {
                    List<CandleCost> costs =
                    [
                        .. session
                            .EachCandle(assessments.Where(a => a.Batch is null || assessments.Count == 1))
                            .Select(a => Of(a, session.FolderOf(a).Catalogue, parse.GetValue(options.AsOf), parse.GetValue(waste))),
                    ];
                    if (parse.GetValue(json))
                    {
                        CostReport[] reports = [.. costs.Select(CostReport.Of)];
                        session.Output.WriteLine(JsonSerializer.Serialize(reports, StoresJson.Plain.CostReportArray));
                    }
                    else
                    {
                        costs.ForEach(c => Tell(session, c));
                    }

                    return ExitCode.Fine;
                }
            )
        );
        return command;
    }

    private static CandleCost Of(Assessment a, Catalogue catalogue, DateOnly day, double waste) =>
        CandleCost.Of(a.Candle, a.Composition.Recipe, catalogue, new Prices(catalogue, day), waste);

    private static void Tell(Session session, CandleCost cost)
    {
        string currency = cost.Rates?.Currency ?? "(no currency declared)";
        session.WriteWrapped($"{cost.Candle.Name}, amounts in {currency}");
        var table = new TextTable("part", "amount", "cost", "by");
        foreach (CostPart p in cost.Parts)
        {
            table.Add(p.What, p.Amount, p.Cost?.ToString() ?? "?", p.By);
        }

        table.Write(session.Output, AssessCommand.Width);
        session.WriteWrapped(
            cost.IsWhole ? $"cost: {cost.Known}" : $"cost: not known; what is known comes to {cost.Known}, so it is more than that."
        );
        if (cost.Price is { } price)
        {
            session.WriteWrapped(
                $"price: {price} with a margin of {Figures.Plain(cost.Rates!.MarginPercent!.Value)} % of it; {cost.PriceWithTax} with {Figures.Plain(cost.Rates.TaxPercent ?? 0)} % tax, by your own rates."
            );
        }
        else if (cost.IsWhole)
        {
            session.WriteWrapped("price: not known, because the maker declares no 'marginPercent' under 'rates'.");
        }

        session.Output.WriteLine();
    }
}
