using System.CommandLine;
using System.Text.Json;
using Chandlery.Cli.Answers;
using Chandlery.Core.Declared;
using Chandlery.Core.SafetyFiles.Recalls;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery dispatches</c>: where candles went, and taking out names that may not be kept.</summary>
internal static class DispatchesCommand
{
    public static Command Build() =>
        new("dispatches", "Where candles went, and whose names must be taken out.") { BuildList(), BuildForget() };

    private static Command BuildList()
    {
        Option<bool> json = JsonOption.Of("dispatches list");
        return KeptFolder.Build(
            "list",
            "List dispatches by batch, and say whose names were kept longer than the law of the place allows.",
            (folder, parse) => List(folder, parse.GetValue(json)),
            json
        );
    }

    private static Command BuildForget()
    {
        var name = new Option<string?>("--name")
        {
            Description = "Take out this person or shop, whatever the day; left out: all that are kept too long.",
        };
        return KeptFolder.Build(
            "forget",
            "Take names and addresses out of dispatches and incidents and keep the counts: all that are kept too long, or one that is named.",
            (folder, parse) => Forget(folder, parse.GetValue(name)),
            name
        );
    }

    private static int List(KeptFolder folder, bool json)
    {
        var overdue = Forgetting.Overdue(folder.Catalogue, folder.Lawbook.Safety, folder.AsOf).ToList();
        var answers = new List<DispatchAnswer>();
        var table = new TextTable("batch", "day", "pieces", "country", "to", "who");
        foreach (Dispatch d in folder.Catalogue.OfKind<Dispatch>().OrderBy(d => d.Batch.Id, StringComparer.Ordinal).ThenBy(d => d.On))
        {
            DateOnly until = overdue.Find(o => o.Dispatch == d).Until;
            answers.Add(Answer(d, until == default ? null : IsoDay.Plain(until)));
            table.Add(
                d.Batch.Id,
                IsoDay.Plain(d.On),
                $"{d.Pieces}",
                d.Country,
                d.ToWhom.ToString().ToLowerInvariant(),
                d.Receiver?.Name ?? $"forgotten {IsoDay.Plain(d.Forgotten!.Value)}"
            );
        }

        folder.Print(json, JsonSerializer.Serialize([.. answers], AnswerJson.Plain.DispatchAnswerArray), table, "dispatch");
        foreach ((Dispatch dispatch, Core.Law.ProductSafety.KeepRow rule, DateOnly until) in overdue)
        {
            folder.Session.Complain(
                $"{dispatch.Id}: the name was allowed until {IsoDay.Plain(until)} ({rule.Clause}): 'chandlery dispatches forget' takes it out."
            );
        }

        return overdue.Count > 0 ? ExitCode.StopsSale : ExitCode.Fine;
    }

    private static DispatchAnswer Answer(Dispatch d, string? keptTooLongSince) =>
        new(
            d.Batch.Id,
            IsoDay.Plain(d.On),
            d.Pieces,
            d.Country,
            d.ToWhom.ToString().ToLowerInvariant(),
            d.Receiver?.Name,
            d.Forgotten is { } day ? IsoDay.Plain(day) : null
        )
        {
            KeptTooLongSince = keptTooLongSince,
        };

    private static int Forget(KeptFolder folder, string? name)
    {
        List<(string File, string Field)> found = name is null
            ?
            [
                .. Forgetting
                    .Overdue(folder.Catalogue, folder.Lawbook.Safety, folder.AsOf)
                    .Select(f => (f.Dispatch.Place.File, "receiver")),
                .. Forgetting
                    .OverdueIncidents(folder.Catalogue, folder.Lawbook.Safety, folder.AsOf)
                    .Select(f => (f.Incident.Place.File, "person")),
            ]
            :
            [
                .. folder.Catalogue.OfKind<Dispatch>().Where(d => d.Receiver?.Name == name).Select(d => (d.Place.File, "receiver")),
                .. folder.Catalogue.OfKind<Incident>().Where(i => i.Person?.Name == name).Select(i => (i.Place.File, "person")),
            ];
        var problems = new Problems();
        foreach ((string file, string field) in found)
        {
            if (TextFile.Read(file, file, problems) is { } text)
            {
                string without = YamlEdit.Remove(text, [field]);
                AtomicFile.Write(file, YamlEdit.Set(without, ["forgotten"], IsoDay.Plain(folder.AsOf)));
                folder.Session.Output.WriteLine(file);
            }
        }

        folder.Session.Output.WriteLine(
            $"{found.Count} name{(found.Count == 1 ? "" : "s")} taken out; counts stay. Copies elsewhere, such as backups and printed letters, are yours to destroy."
        );
        return problems.None ? ExitCode.Fine : folder.Session.Report(problems.Found);
    }
}
