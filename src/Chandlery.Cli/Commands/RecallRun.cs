using System.Text.Json;
using Chandlery.Core.Declared;
using Chandlery.Core.SafetyFiles;
using Chandlery.Core.SafetyFiles.Recalls;
using Chandlery.Files;
using Chandlery.Files.Recalls;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary>Carries out a recall as far as paper goes.</summary>
internal sealed class RecallRun(KeptFolder folder)
{
    private readonly Problems problems = new();

    private string Near(RecallQuery query)
    {
        IEnumerable<string> known = query.By switch
        {
            RecallBy.Lot => folder.Catalogue.OfKind<Lot>().SelectMany(l => new[] { l.Id, l.Code }),
            RecallBy.Batch => folder.Catalogue.OfKind<Batch>().SelectMany(b => new[] { b.Id, b.Code }),
            RecallBy.Oil => folder.Catalogue.OfKind<Oil>().Select(o => o.Id),
            _ => [],
        };
        return Suggestion.Nearest(query.Text, known.OfType<string>()) is { } near ? $" Did you mean '{near}'?" : "";
    }

    public int Run(RecallQuery query, IReadOnlyList<string> hazards, bool json, string? into)
    {
        if (new RecallFinder(folder.Catalogue).Find(query) is not { } recall)
        {
            folder.Session.Complain($"Nothing named '{query.Text}' is declared as {query.By.ToString().ToLowerInvariant()}.{Near(query)}");
            return ExitCode.BadInput;
        }

        folder.Print(json, JsonSerializer.Serialize(RecallReports.Of(recall), SafetyFileJson.Plain.RecallReport), Table(recall));
        foreach (string unknown in recall.Unknown)
        {
            folder.Session.Complain($"Not known: {unknown}");
        }

        if (into is null || recall.Batches.Count == 0)
        {
            return recall.Batches.Count == 0 ? ExitCode.Fine : ExitCode.StopsSale;
        }

        if (
            SaidDangers.Read(recall, folder.Lawbook, hazards, "--hazard", problems) is not { } dangers
            || folder.Catalogue.OfKind<Maker>().FirstOrDefault() is not { } maker
        )
        {
            return folder.Session.Report(problems.Found);
        }

        var ground = new RecallGround(folder.Catalogue, folder.Lawbook, ShippedShop.Open(folder.Data, null, problems), folder.AsOf);
        var papers = new RecallPapers(ground, problems);
        IReadOnlyList<PendingFile> files = papers.Make(recall, dangers, maker);
        if (!problems.None)
        {
            return folder.Session.Report(problems.Found);
        }

        folder.Session.Write(files, into);
        foreach (string mind in papers.Minds)
        {
            folder.Session.Complain(mind);
        }

        return ExitCode.StopsSale;
    }

    private static TextTable Table(RecallResult recall)
    {
        var table = new TextTable("batch", "product", "made", "sent", "left", "who", "why");
        foreach (AffectedBatch b in recall.Batches)
        {
            table.Add(
                b.Batch.Code,
                b.Candle.Name,
                b.Batch.Made is { } made ? $"{made}" : "?",
                $"{b.Dispatched}",
                b.Left is { } left ? $"{left}" : "?",
                "",
                b.IsCertain ? b.Why : $"cannot be ruled out: {b.Why}"
            );
            foreach (Dispatch d in b.Dispatches)
            {
                table.Add("", "", "", $"{d.Pieces}", "", d.Receiver?.Name ?? "(forgotten)", $"{IsoDay.Plain(d.On)}, {d.Country}");
            }
        }

        return table;
    }
}
