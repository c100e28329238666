using System.Text;
using System.Text.Json;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles;
using Chandlery.Core.SafetyFiles.Recalls;
using Chandlery.Core.SafetyFiles.Records;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers.Recalls;
using Chandlery.Paper.Papers.Records;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Files.Recalls;

/// <summary>All that a recall sends out: notices, shelf cards, letters, texts for the web, the form for the authority, the receivers.</summary>
/// <param name="ground">What they are made of.</param>
/// <param name="problems">Collects why one cannot be made.</param>
public sealed class RecallPapers(RecallGround ground, Problems problems)
{
    private readonly List<PendingFile> files = [];
    private readonly List<string> minds = [];

    /// <summary>What to mind before anything goes out.</summary>
    public IReadOnlyList<string> Minds => minds;

    /// <summary>Makes them.</summary>
    /// <param name="recall">What is recalled.</param>
    /// <param name="dangers">What the danger is.</param>
    /// <param name="maker">Who recalls it.</param>
    public IReadOnlyList<PendingFile> Make(RecallResult recall, SaidDangers dangers, Maker maker)
    {
        var pictures = new RecalledPictures(ground, problems);
        Dictionary<string, string> places = ground.Lawbook.Places.ToDictionary(p => p.Code.Text, p => p.Name);
        Dictionary<string, List<string>> spoken = recall
            .Batches.SelectMany(b => b.Dispatches)
            .Select(d => d.Country)
            .Distinct()
            .ToDictionary(c => c, LanguagesOf);
        foreach (IGrouping<string, AffectedBatch> candle in recall.Batches.GroupBy(b => b.Candle.Id))
        {
            List<AffectedBatch> batches = [.. candle];
            RecalledPicture? picture = Pictured(batches[0], pictures);
            var documents = new RecallDocuments(ground.Shop, problems) { Pictured = picture?.Scene };
            List<string> languages =
            [
                .. batches.SelectMany(b => b.Dispatches).SelectMany(d => spoken[d.Country]).Append(SaidDangers.Fallback).Distinct(),
            ];
            foreach (string code in languages)
            {
                var words = new RecallWords(
                    ground.Lawbook.Safety.Words.Find(code)!,
                    ground.Kinds.Of(batches[0].Candle),
                    ground.Lawbook.FindLanguage(code)!
                );
                if (!dangers.Has(code))
                {
                    minds.Add($"{candle.Key}, {code}: the danger is said in English there: say it in that language too.");
                }

                NoticeText notice = NoticeText.Of(batches, maker, dangers.In(code), words);
                if (picture is not null)
                {
                    notice = notice.WithPicture(picture.FileName, picture.IsLabel ? $"{words["picture"]}: {words["labelNotice"]}" : "");
                }

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

        var authority = new AuthorityRecord(recall, maker, ground.Kinds, ground.AsOf);
        (string, RecallRules?) RulesOf(string country) =>
            (places.GetValueOrDefault(country, country), ground.Lawbook.Safety.For(ground.Lawbook.Safety.Recalls, country));
        void Form(SafetyWords words, IEnumerable<string> countries, string name)
        {
            string hazard = dangers.In(words.Code);
            Draw(name, RecordDocument.Make(authority.Of(hazard, [.. countries.Select(RulesOf)], words), ground.Shop, problems));
        }

        // The maker reads English; each place gets the form in its own language where there are words for it.
        Shelf<SafetyWords> tongues = ground.Lawbook.Safety.AuthorityWords;
        Form(tongues.Find(SaidDangers.Fallback)!, spoken.Keys, "recall-authority");
        foreach (IGrouping<string, string> tongue in spoken.Keys.GroupBy(c => spoken[c][0]))
        {
            if (tongue.Key != SaidDangers.Fallback && tongues.Find(tongue.Key) is { } words)
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
        minds.Add(
            "Whom to ask must be reached free of charge, by telephone or on the web, and nothing declares that your number is: check it before the notice goes out."
        );
        return files;
    }

    private RecalledPicture? Pictured(AffectedBatch batch, RecalledPictures pictures)
    {
        RecalledPicture? picture = pictures.Of(batch);
        if (picture is not null)
        {
            files.Add(new PendingFile(picture.FileName, picture.File));
        }

        if (batch.Candle.Picture is null)
        {
            minds.Add(
                picture is null
                    ? $"{batch.Candle.Id}: add a picture of the product to notice, shelf card and web page: the law asks for one, none is declared ('picture' in its file), and its label cannot be drawn."
                    : $"{batch.Candle.Id}: no picture of the product is declared ('picture' in its file), so the notices show its label and say so: a photograph shows more."
            );
        }

        return picture;
    }

    private List<string> LanguagesOf(string country)
    {
        List<string> known = Known(ground.Lawbook, country);
        if (known.Count == 0)
        {
            minds.Add($"{country}: there are no words for a recall in its language: English is used, and a translation is yours to add.");
        }

        return known.Count > 0 ? known : [SaidDangers.Fallback];
    }

    // The languages of the place for which there are words.
    private static List<string> Known(Lawbook law, string country) =>
        [.. (law.FindPlace(country)?.Languages ?? []).Where(l => law.Safety.Words.Find(l) is not null)];

    /// <summary>The languages in which the danger of a recall must be said, English last.</summary>
    public static IEnumerable<Language> Languages(RecallResult recall, Lawbook law) =>
        recall
            .Batches.SelectMany(b => b.Dispatches)
            .SelectMany(d => Known(law, d.Country))
            .Where(l => l != SaidDangers.Fallback)
            .Distinct()
            .Append(SaidDangers.Fallback)
            .Select(l => law.FindLanguage(l)!);

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
