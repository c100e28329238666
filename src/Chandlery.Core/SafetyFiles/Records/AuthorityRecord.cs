using Chandlery.Core.Declared;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles.Recalls;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Records;

/// <summary>What an authority is told of a recall.</summary>
public static class AuthorityRecord
{
    /// <summary>The form.</summary>
    /// <param name="recall">Whom it reaches.</param>
    /// <param name="maker">Who recalls.</param>
    /// <param name="hazard">What the danger is.</param>
    /// <param name="rules">Rules of the places of sale, with their names.</param>
    /// <param name="kinds">What kinds of product are reached.</param>
    /// <param name="day">The day.</param>
    public static KeptRecord Of(
        RecallResult recall,
        Maker maker,
        string hazard,
        IReadOnlyList<(string Place, RecallRules? Rules)> rules,
        DeclaredKinds kinds,
        DateOnly day
    )
    {
        string Say(string text) => kinds.Say(text, recall.Batches.Select(b => b.Candle));
        return new(
            "Notification of a recall",
            string.Join(", ", recall.Batches.Select(b => b.Candle.Name).Distinct()),
            [$"Made {IsoDay.Plain(day)}, in English. Begun with {recall.Query.By.ToString().ToLowerInvariant()} {recall.Query.Text}."],
            [
                new RecordSection(
                    "To whom",
                    [
                        .. RecordSection.Texts(
                            rules.Select(r =>
                                r.Rules is { } known
                                    ? $"{r.Place}: {Say(known.Authority)} ({known.AuthorityClause})"
                                    : $"{r.Place}: no rule is known here: look up whom to tell."
                            )
                        ),
                    ]
                ),
                new RecordSection("Who recalls", [Contact(maker)]),
                new RecordSection("The danger", [new SafetyDataSheets.SheetText(hazard)]),
                new RecordSection(
                    "Batches",
                    RecordSection.Table(
                        [18, 20, 26, 10, 10, 16],
                        ["Batch", Say("Candle"), "Why", "Made", "Sent", "Left"],
                        [
                            .. recall.Batches.Select(b =>
                                new[]
                                {
                                    b.Batch.Code,
                                    b.Candle.Name,
                                    b.IsCertain ? b.Why : $"cannot be ruled out: {b.Why}",
                                    b.Batch.Made is { } made ? $"{made}" : "not known",
                                    $"{b.Dispatched}",
                                    b.Left is { } left ? $"{left}" : "not known",
                                }
                            ),
                        ],
                        "None."
                    )
                ),
                new RecordSection(
                    "Where they went",
                    RecordSection.Table(
                        [30, 20, 25, 25],
                        ["Country", "To", "Pieces", "Receivers"],
                        [
                            .. recall
                                .Batches.SelectMany(b => b.Dispatches)
                                .GroupBy(d => (d.Country, d.ToWhom))
                                .Select(g =>
                                    new[]
                                    {
                                        g.Key.Country,
                                        g.Key.ToWhom == ReceiverKind.Shop ? "shops" : "persons",
                                        $"{g.Sum(d => d.Pieces)}",
                                        $"{g.Count()}",
                                    }
                                ),
                        ],
                        "No dispatch is declared."
                    )
                ),
                new RecordSection(
                    "What is done",
                    [
                        new SafetyDataSheets.SheetText(
                            Say(
                                "Every shop and person that is known is written to; notice, shelf card and text for the web are made. Left candles are kept back."
                            )
                        ),
                    ]
                ),
                new RecordSection("What is not known", [.. RecordSection.Texts(recall.Unknown.DefaultIfEmpty("Nothing."))]),
                new RecordSection("Signed", [new SafetyDataSheets.SheetText("Place, date, name: ______________________________")]),
            ]
        );
    }

    private static SafetyDataSheets.SheetBlock Contact(Maker maker) =>
        RecordSection.Pairs(
            ("Name", maker.Name),
            ("Address", string.Join(", ", maker.AddressLines)),
            ("Telephone", maker.Telephone),
            ("Electronic", maker.Email ?? maker.Web ?? ""),
            (
                "Responsible person",
                string.Join("; ", maker.Parties.ResponsiblePersons.Select(p => p.OnOneLine).DefaultIfEmpty("none declared"))
            )
        );
}
