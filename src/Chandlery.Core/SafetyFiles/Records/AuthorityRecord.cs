using Chandlery.Core.Declared;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Core.SafetyFiles.Recalls;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Records;

/// <summary>What an authority is told of a recall, in its language where there are words for it; what stays English is said.</summary>
/// <param name="recall">Whom it reaches.</param>
/// <param name="maker">Who recalls.</param>
/// <param name="kinds">What kinds of product are reached.</param>
/// <param name="day">The day.</param>
public sealed class AuthorityRecord(RecallResult recall, Maker maker, DeclaredKinds kinds, DateOnly day)
{
    private const string English = "en";

    /// <summary>The form.</summary>
    /// <param name="hazard">What the danger is.</param>
    /// <param name="rules">Rules of the places of sale, with their names.</param>
    /// <param name="words">Words of the form in one language.</param>
    public KeptRecord Of(string hazard, IReadOnlyList<(string Place, RecallRules? Rules)> rules, SafetyWords words)
    {
        string W(string key, params IEnumerable<(string, string)> marks) => NoticeText.Fill(Said(words, key), marks);
        string begun = W("begun", ("what", W($"by{recall.Query.By}")), ("text", recall.Query.Text));
        return new KeptRecord(
            W("title"),
            string.Join(", ", recall.Batches.Select(b => b.Candle.Name).Distinct()),
            [$"{W("made", ("date", IsoDay.Plain(day)))} {begun}", .. words.Code == English ? Array.Empty<string>() : [W("untold")]],
            [
                new RecordSection(
                    W("to"),
                    [
                        .. RecordSection.Texts(
                            rules.Select(r =>
                                r.Rules is { } known
                                    ? $"{r.Place}: {kinds.Say(known.Authority, Candles)} ({known.AuthorityClause})"
                                    : W("noRule", ("place", r.Place))
                            )
                        ),
                    ]
                ),
                new RecordSection(W("who"), [Contact(words)]),
                new RecordSection(W("danger"), [new SheetText(hazard)]),
                new RecordSection(W("batches"), Batches(words)),
                new RecordSection(W("went"), Sent(words)),
                new RecordSection(W("done"), [new SheetText(W("doneText"))]),
                new RecordSection(W("unknown"), [.. RecordSection.Texts(recall.Unknown.DefaultIfEmpty(W("nothing")))]),
                new RecordSection(W("signed"), [new SheetText(W("sign"))]),
            ]
        )
        {
            Language = words.Code,
        };
    }

    private IEnumerable<Candle> Candles => recall.Batches.Select(b => b.Candle);

    // Our English texts speak of candles, and of another kind where it is another.
    private string Said(SafetyWords words, string key) => words.Code == English ? kinds.Say(words.Words[key], Candles) : words.Words[key];

    private IReadOnlyList<SheetBlock> Batches(SafetyWords words) =>
        RecordSection.Table(
            [18, 20, 26, 12, 12, 12],
            [
                Said(words, "batch"),
                Said(words, "product"),
                Said(words, "why"),
                Said(words, "count"),
                Said(words, "sent"),
                Said(words, "left"),
            ],
            [
                .. recall.Batches.Select(b =>
                    new[]
                    {
                        b.Batch.Code,
                        b.Candle.Name,
                        b.IsCertain ? b.Why : NoticeText.Fill(Said(words, "maybe"), ("why", b.Why)),
                        b.Batch.Made is { } made ? $"{made}" : Said(words, "notKnown"),
                        $"{b.Dispatched}",
                        b.Left is { } left ? $"{left}" : Said(words, "notKnown"),
                    }
                ),
            ],
            Said(words, "none")
        );

    private IReadOnlyList<SheetBlock> Sent(SafetyWords words) =>
        RecordSection.Table(
            [30, 20, 25, 25],
            [Said(words, "country"), Said(words, "receiver"), Said(words, "pieces"), Said(words, "receivers")],
            [
                .. recall
                    .Batches.SelectMany(b => b.Dispatches)
                    .GroupBy(d => (d.Country, d.ToWhom))
                    .Select(g =>
                        new[]
                        {
                            g.Key.Country,
                            Said(words, g.Key.ToWhom == ReceiverKind.Shop ? "shops" : "persons"),
                            $"{g.Sum(d => d.Pieces)}",
                            $"{g.Count()}",
                        }
                    ),
            ],
            Said(words, "noDispatch")
        );

    private SheetBlock Contact(SafetyWords words) =>
        RecordSection.Pairs(
            (Said(words, "name"), maker.Name),
            (Said(words, "address"), string.Join(", ", maker.AddressLines)),
            (Said(words, "telephone"), maker.Telephone),
            (Said(words, "electronic"), maker.Email ?? maker.Web ?? ""),
            (
                Said(words, "responsible"),
                string.Join("; ", maker.Parties.ResponsiblePersons.Select(p => p.OnOneLine).DefaultIfEmpty(Said(words, "noneDeclared")))
            )
        );
}
