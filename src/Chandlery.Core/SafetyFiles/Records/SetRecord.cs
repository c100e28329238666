using Chandlery.Core.Assessed;
using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyDataSheets;

namespace Chandlery.Core.SafetyFiles.Records;

/// <summary>A gift set as a document: what is in the box, what the box bears, which cards go with it.</summary>
public static class SetRecord
{
    /// <summary>The document.</summary>
    public static KeptRecord Of(SetSheet sheet) =>
        new(
            "Gift set",
            sheet.Set.Name,
            [
                $"{sheet.Set.Id}. {sheet.Edition.Name}; sold in {string.Join(", ", sheet.Places.Select(p => p.Name))}.",
                "It helps; it does not replace local law or a competent person.",
            ],
            [
                new RecordSection("1 What is in the box", Contents(sheet)),
                new RecordSection("2 Labels that the box bears too", [.. OnBox(sheet)]),
                new RecordSection("3 Cards that go into the box", [.. RecordSection.Texts(Cards(sheet))]),
                new RecordSection(
                    "4 What stops the sale or must be looked at",
                    [.. RecordSection.Texts(sheet.Findings.Select(Said).DefaultIfEmpty("Nothing that the program can see."))]
                ),
            ]
        );

    private static string Said(Finding f) =>
        $"{(f.Gravity == Gravity.Stop ? "Stops the sale: " : "")}{f.What}{(f.Clause.IsNone ? "" : $" ({f.Clause})")}";

    private static IReadOnlyList<SheetBlock> Contents(SetSheet sheet) =>
        RecordSection.Table(
            [10, 34, 20, 36],
            ["Pieces", "Product", "Quantity each", "Kind"],
            [
                .. sheet.Lines.Select(l =>
                    new[]
                    {
                        $"{l.Count}",
                        l.Product.Candle.Name,
                        l.Product.Candle.NetVolume is { } volume
                            ? $"{FigureFormat.English.Declared(volume.Value)} ml"
                            : $"{FigureFormat.English.Declared(l.Product.Candle.NetMass.Value)} g",
                        l.Product.Kind.Name,
                    }
                ),
            ],
            "Nothing."
        );

    private static IEnumerable<SheetBlock> OnBox(SetSheet sheet)
    {
        if (sheet.OnBox.Count == 0)
        {
            yield return new SheetText(
                sheet.Set.IsSeenThrough ? "None: every label inside can be read through the box." : "None: no product has one."
            );
        }

        foreach (SetLine line in sheet.OnBox)
        {
            Assessment a = line.Product;
            yield return new SheetText($"{a.Candle.Name}: the label of 'chandlery label', whole.", Strong: true);
            if (a.Label.Pictograms.Count > 0)
            {
                yield return new SheetPictograms([.. a.Label.Pictograms.Select(p => p.Code.Code)]);
            }

            yield return RecordSection.Pairs(
                ("Signal word", a.Label.SignalWord?.Text ?? "none"),
                ("Statements", string.Join(", ", a.Label.All.Select(c => c.Text))),
                ("UFI", a.Ufi ?? "none"),
                ("Languages", string.Join(", ", a.Languages.Select(l => l.Name)))
            );
        }
    }

    private static IEnumerable<string> Cards(SetSheet sheet) =>
        sheet.Lines.Select(l =>
            $"{l.Product.Candle.Name}: {(l.Product.Kind.Burns ? "burn-safety card" : "card on safe use")}, of 'chandlery card', in {string.Join(", ", l.Product.Languages.Select(x => x.Name))}."
        );
}
