using System.CommandLine;
using System.Text.Json;
using Chandlery.Core.Making.Stores;
using Chandlery.Core.Quantities;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery stores</c>: what is there, what runs out, what grows old.</summary>
internal static class StoresCommand
{
    public static Command Build()
    {
        Option<bool> json = JsonOption.Of("stores");
        return KeptFolder.Build(
            "stores",
            "Say what is left of every material: lots in, batches out; which oils are near their best-before day; how many of each candle it is enough for. It keeps no books.",
            (folder, parse) => Run(folder, parse.GetValue(json)),
            json
        );
    }

    private static int Run(KeptFolder folder, bool json)
    {
        var store = Storeroom.On(folder.Catalogue, folder.AsOf, folder.Problems);
        var table = new TextTable("kind", "material", "bought", "used", "left", "to mind");
        foreach (StoreLine l in store.Lines)
        {
            table.Add(
                l.Material.Content.ToString().ToLowerInvariant(),
                l.Name,
                Amount(l.In, l),
                Amount(l.Out, l),
                Amount(l.Left, l),
                l.Notes.Count == 0 ? "-" : string.Join(' ', l.Notes)
            );
        }

        folder.Print(json, JsonSerializer.Serialize(StoreReport.Of(store), StoresJson.Plain.StoreReport), table, "lot");
        if (!json)
        {
            folder.Session.Output.WriteLine();
            var enough = new TextTable("candle", "enough for", "what runs out first");
            foreach (CanMake c in store.EnoughFor)
            {
                enough.Add(c.CandleId, c.Count is { } count ? $"{count}" : "?", c.Scarce);
            }

            enough.Write(folder.Session.Output, AssessCommand.Width);
        }

        return ExitCode.Fine;
    }

    private static string Amount(double? amount, StoreLine line) =>
        amount is { } a ? $"{Figures.Rounded(a, line.Material.IsCounted ? 0 : 1)} {line.Material.Unit}" : "?";
}
