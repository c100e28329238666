using System.Globalization;

namespace Chandlery.Sheets.Wild;

/// <summary>A random allergen statement.</summary>
public sealed class WildStatement(Random dice, WildWords words, IReadOnlyList<WildIngredient> substances)
{
    private static readonly string[] Layouts = ["percent", "percent and ppm", "panels", "ppm"];

    public WildSheet Make(int seed)
    {
        string layout = Layouts[dice.Next(Layouts.Length)];
        List<WildIngredient> all =
        [
            .. substances.Select(i =>
            {
                double share = dice.Next(4) == 0 ? 0 : Math.Round((dice.NextDouble() * 3) + 0.001, 3);
                return new WildIngredient(i.Name, i.Cas, null, new WildShare(share, share, false), null, [], null, null, null);
            }),
        ];
        string product = $"Lime Kiln {dice.Next(100, 999)}";
        var day = new DateOnly(2024, 1 + dice.Next(12), 13 + dice.Next(14));
        string[] head = layout switch
        {
            "percent and ppm" => [words.First("allergen"), words.First("colCas"), "%", "ppm"],
            "ppm" => [words.First("allergen"), words.First("colCas"), "ppm"],
            _ => [words.First("allergen"), words.First("colCas"), "%"],
        };
        List<string[]> rows = [.. all.Select(i => Row(i, layout))];
        double[] widths = [40, 20, .. head.Skip(2).Select(_ => 16.0)];
        TableRules rules = (TableRules)dice.Next(4);
        IReadOnlyList<TableCell> Cells(IEnumerable<string> texts) => [.. texts.Select(TableCell.Of)];
        int half = (rows.Count + 1) / 2;
        TableBlock table =
            layout == "panels"
                ? new TableBlock(
                    [Cells([.. head, .. head])],
                    [
                        .. Enumerable
                            .Range(0, half)
                            .Select(r => Cells([.. rows[r], .. r + half < rows.Count ? rows[r + half] : ["", "", ""]])),
                    ],
                    [.. widths, .. widths],
                    rules,
                    false,
                    true
                )
                : new TableBlock([Cells(head)], [.. rows.Select(Cells)], widths, rules, false, true);
        List<Block> blocks =
        [
            new ParagraphBlock([
                words.Any("allergens", dice),
                $"{words.First("name")}: {product}",
                $"{words.First("date")}: {day.ToString("dd.MM.yyyy", CultureInfo.InvariantCulture)}",
            ]),
            table,
        ];
        var truth = new WildTruth(product, null, null, null, day, null, [.. all.Where(i => i.Share.High > 0)], null, null, []);
        return new WildSheet(
            seed,
            "allergens",
            "allergens " + layout,
            words.Language,
            new SheetForm(210, 297, 15, 8, 1, false, "", ""),
            blocks,
            truth
        );
    }

    private string[] Row(WildIngredient i, string layout)
    {
        string Shown(double factor) =>
            i.Share.High == 0 ? words.First("notPresent") : WildShare.Figure(Math.Round(i.Share.High * factor, 4), 0, words);
        return layout switch
        {
            "percent and ppm" => [i.Name, i.Cas, Shown(1), Shown(10000)],
            "ppm" => [i.Name, i.Cas, Shown(10000)],
            _ => [i.Name, i.Cas, Shown(1)],
        };
    }
}
