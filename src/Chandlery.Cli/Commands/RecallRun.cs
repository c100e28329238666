using System.Text;
using System.Text.Json;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles;
using Chandlery.Core.SafetyFiles.Recalls;
using Chandlery.Core.SafetyFiles.Records;
using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Recalls;
using Chandlery.Paper.Papers.Records;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary>Carries out a recall as far as paper goes.</summary>
internal sealed class RecallRun(KeptFolder folder)
{
    private const string Fallback = "en";

    private readonly Problems problems = new();
    private readonly List<PendingFile> files = [];

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

        if (Dangers(recall, hazards) is not { } dangers || folder.Catalogue.OfKind<Maker>().FirstOrDefault() is not { } maker)
        {
            return folder.Session.Report(problems.Found);
        }

        Write(recall, dangers, maker);
        if (!problems.None)
        {
            return folder.Session.Report(problems.Found);
        }

        folder.Session.Write(files, into);
        folder.Session.Complain(
            folder.Kinds.Say(
                "Add a picture of the candle to notice, shelf card and web page: the law asks for one, and none is declared.",
                recall.Batches.Select(b => b.Candle)
            )
        );
        folder.Session.Complain(
            "Whom to ask must be reached free of charge, by telephone or on the web, and nothing declares that your number is: check it before the notice goes out."
        );
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

    // By language; null with problems.
    private Dictionary<string, string>? Dangers(RecallResult recall, IReadOnlyList<string> hazards)
    {
        HashSet<string> countries = [.. recall.Batches.SelectMany(b => b.Dispatches).Select(d => d.Country)];
        List<RecallRules> laws =
        [
            .. countries.Select(c => folder.Lawbook.Safety.For(folder.Lawbook.Safety.Recalls, c)).OfType<RecallRules>().Distinct(),
        ];
        var dangers = new Dictionary<string, string>();
        foreach (string hazard in hazards)
        {
            string[] parts = hazard.Split(':', 2);
            string code = parts[0].Trim();
            if (parts.Length < 2 || folder.Lawbook.FindLanguage(code) is null)
            {
                problems.Add(
                    new TextPlace("--hazard", 0, 0),
                    $"'{hazard}' does not begin with a language and a colon.",
                    "Write \"en: The vessel can crack and hot wax can run out.\""
                );
                continue;
            }

            foreach (RecallRules rules in laws.Count > 0 ? laws : [.. folder.Lawbook.Safety.Recalls])
            {
                foreach (string word in rules.Lessening(parts[1]))
                {
                    problems.Add(
                        new TextPlace("--hazard", 0, 0),
                        $"'{word}' lessens the risk, which a recall notice must not do ({rules.AvoidClause}).",
                        "Say what can happen, and nothing that plays it down."
                    );
                }
            }

            dangers[code] = parts[1].Trim();
        }

        if (problems.None && !dangers.ContainsKey(Fallback))
        {
            problems.Add(
                new TextPlace("--hazard", 0, 0),
                "The danger is not said in English.",
                "Add --hazard \"en: ...\": receivers whose language is not at hand get it."
            );
        }

        return problems.None ? dangers : null;
    }

    private void Write(RecallResult recall, Dictionary<string, string> dangers, Maker maker)
    {
        PaperShop shop = ShippedShop.Open(folder.Data, null, problems);
        var documents = new RecallDocuments(shop, problems);
        Dictionary<string, string> places = folder.Lawbook.Places.ToDictionary(p => p.Code.Text, p => p.Name);
        Dictionary<string, List<string>> spoken = recall
            .Batches.SelectMany(b => b.Dispatches)
            .Select(d => d.Country)
            .Distinct()
            .ToDictionary(c => c, LanguagesOf);
        foreach (IGrouping<string, AffectedBatch> candle in recall.Batches.GroupBy(b => b.Candle.Id))
        {
            List<AffectedBatch> batches = [.. candle];
            List<string> languages =
            [
                .. batches.SelectMany(b => b.Dispatches).SelectMany(d => spoken[d.Country]).Append(Fallback).Distinct(),
            ];
            foreach (string code in languages)
            {
                var words = new RecallWords(
                    folder.Lawbook.Safety.Words.Find(code)!,
                    folder.Kinds.Of(batches[0].Candle),
                    folder.Lawbook.FindLanguage(code)!
                );
                if (!dangers.ContainsKey(code))
                {
                    folder.Session.Complain($"{candle.Key}, {code}: the danger is said in English there: add --hazard \"{code}: ...\".");
                }

                NoticeText notice = NoticeText.Of(batches, maker, dangers.GetValueOrDefault(code, dangers[Fallback]), words);
                Draw($"{candle.Key}-recall-notice-{code}", documents.Notice(notice));
                Draw($"{candle.Key}-recall-shelf-card-{code}", documents.ShelfCard(notice));
                files.Add(new PendingFile($"{candle.Key}-recall-web-{code}.html", Encoding.UTF8.GetBytes(NoticeWeb.Html(notice))));
                foreach (
                    Dispatch dispatch in batches
                        .SelectMany(b => b.Dispatches)
                        .Where(d => d.Receiver is not null && spoken[d.Country][0] == code)
                )
                {
                    Draw($"{candle.Key}-recall-letter-{dispatch.Id}", documents.Letter(notice, dispatch, dispatch.Receiver!, words));
                }
            }
        }

        var authority = new AuthorityRecord(recall, maker, folder.Kinds, folder.AsOf);
        (string, RecallRules?) RulesOf(string country) =>
            (places.GetValueOrDefault(country, country), folder.Lawbook.Safety.For(folder.Lawbook.Safety.Recalls, country));
        void Form(SafetyWords words, IEnumerable<string> countries, string name)
        {
            string hazard = dangers.GetValueOrDefault(words.Code, dangers[Fallback]);
            Draw(name, RecordDocument.Make(authority.Of(hazard, [.. countries.Select(RulesOf)], words), shop, problems));
        }

        // The maker reads English; each place gets the form in its own language where there are words for it.
        Shelf<SafetyWords> tongues = folder.Lawbook.Safety.AuthorityWords;
        Form(tongues.Find(Fallback)!, spoken.Keys, "recall-authority");
        foreach (IGrouping<string, string> tongue in spoken.Keys.GroupBy(c => spoken[c][0]))
        {
            if (tongue.Key != Fallback && tongues.Find(tongue.Key) is { } words)
            {
                Form(words, tongue, $"recall-authority-{tongue.Key}");
            }
        }

        files.Add(
            new PendingFile(
                "recall.json",
                Encoding.UTF8.GetBytes(JsonSerializer.Serialize(RecallReports.Of(recall), SafetyFileJson.Plain.RecallReport))
            )
        );
        files.Add(new PendingFile("recall-receivers.csv", Encoding.UTF8.GetBytes(Receivers(recall))));
    }

    // The languages of the place for which there are words; English where there is none.
    private List<string> LanguagesOf(string country)
    {
        List<string> known =
        [
            .. (folder.Lawbook.FindPlace(country)?.Languages ?? []).Where(l => folder.Lawbook.Safety.Words.Find(l) is not null),
        ];
        if (known.Count == 0)
        {
            folder.Session.Complain(
                $"{country}: there are no words for a recall in its language: English is used, and a translation is yours to add."
            );
        }

        return known.Count > 0 ? known : [Fallback];
    }

    private void Draw(string name, PaperDocument? document)
    {
        if (document is not null)
        {
            files.Add(new PendingFile(name + ".pdf", PdfDrawing.Draw(document)));
        }
    }

    private static string Receivers(RecallResult recall) =>
        Csv.Write(
            ["batch", "day", "pieces", "country", "to", "name", "contact"],
            recall.Batches.SelectMany(b =>
                b.Dispatches.Select(d =>
                    (IReadOnlyList<string>)
                        [
                            b.Batch.Code,
                            IsoDay.Plain(d.On),
                            $"{d.Pieces}",
                            d.Country,
                            d.ToWhom.ToString().ToLowerInvariant(),
                            d.Receiver?.Name ?? "",
                            d.Receiver is { } receiver ? RecallReports.ContactOf(receiver) ?? "" : "",
                        ]
                )
            )
        );
}
