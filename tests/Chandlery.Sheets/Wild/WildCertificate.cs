using System.Globalization;

namespace Chandlery.Sheets.Wild;

/// <summary>A random IFRA certificate.</summary>
public sealed class WildCertificate(Random dice, WildWords words)
{
    private static readonly string[] Categories =
    [
        "1",
        "2",
        "3",
        "4",
        "5A",
        "5B",
        "5C",
        "5D",
        "6",
        "7A",
        "7B",
        "8",
        "9",
        "10A",
        "10B",
        "11A",
        "11B",
        "12",
    ];

    private static readonly string[] Layouts = ["rows", "percent first", "grouped", "transposed", "panels", "wrapped"];
    private readonly string restricted = words.Any("notRestricted", dice);
    private readonly string permitted = words.Any("notPermitted", dice);

    public WildSheet Make(int seed)
    {
        string layout = Layouts[dice.Next(Layouts.Length)];
        var limits = new List<(string Category, string Limit)>();
        string last = "";
        foreach (string category in Categories)
        {
            bool withLast = layout == "grouped" && category.Length == 2 && limits.Count > 0 && limits[^1].Category[..1] == category[..1];
            last = withLast ? last : Limit();
            limits.Add((category, last));
        }

        string product = $"Night Fig {dice.Next(100, 999)}";
        var day = new DateOnly(2024, 1 + dice.Next(12), 13 + dice.Next(14));
        string date = day.ToString("dd.MM.yyyy", CultureInfo.InvariantCulture);
        List<Block> blocks =
        [
            new ParagraphBlock([
                words.First("ifra"),
                $"{words.First("name")}: {product}",
                $"{words.First("date")}: {date}",
                $"IFRA {words.First("amendment")}",
            ]),
            .. Table(layout, limits),
            new ParagraphBlock([words.First("mixture")]),
        ];
        var paper = new SheetForm(210, 297, 18, 9, 1, false, "", "");
        var truth = new WildTruth(product, null, null, null, day, null, [], null, null, limits);
        return new WildSheet(seed, "ifra", "IFRA " + layout, words.Language, paper, blocks, truth);
    }

    private string Limit() =>
        dice.Next(6) switch
        {
            0 => "not restricted",
            1 => "not permitted",
            _ => Math.Round(dice.NextDouble() * 20, 2).ToString(CultureInfo.InvariantCulture),
        };

    private string Shown(string limit) =>
        limit switch
        {
            "not restricted" => restricted,
            "not permitted" => permitted,
            _ => (words.HasDecimalComma ? limit.Replace('.', ',') : limit) + " %",
        };

    private IEnumerable<Block> Table(string layout, List<(string Category, string Limit)> limits)
    {
        string category = words.Any("ifraCategory", dice);
        string level = words.Any("ifraLevel", dice);
        string word =
            dice.Next(2) == 0 ? words.First("ifraCategory").Replace("IFRA ", "", StringComparison.Ordinal).Split('-')[^1] + " " : "";
        word = words.Language == "en" && word.Length > 0 ? "Category " : "";
        TableRules rules = (TableRules)dice.Next(4);
        IReadOnlyList<TableCell> Row(params string[] cells) => [.. cells.Select(TableCell.Of)];
        string description = words.First("mild");
        switch (layout)
        {
            case "percent first":
                yield return new TableBlock(
                    [Row(level, category)],
                    [.. limits.Select(l => Row(Shown(l.Limit), word + l.Category))],
                    [30, 30],
                    rules,
                    false,
                    true
                );
                break;
            case "grouped":
                IEnumerable<IGrouping<string, (string Category, string Limit)>> groups = limits.GroupBy(l =>
                    l.Category[..^1].Length == 0 || char.IsDigit(l.Category[^1]) ? l.Category : l.Category[..^1] + l.Limit
                );
                yield return new TableBlock(
                    [Row(category, level)],
                    [.. groups.Select(g => Row(word + string.Join(", ", g.Select(l => l.Category)), Shown(g.First().Limit)))],
                    [40, 30],
                    rules,
                    false,
                    true
                );
                break;
            case "transposed":
                foreach ((string Category, string Limit)[] part in limits.Chunk(6))
                {
                    yield return new TableBlock(
                        [],
                        [Row([category, .. part.Select(p => p.Category)]), Row([level, .. part.Select(p => Shown(p.Limit))])],
                        [30, .. part.Select(_ => 15.0)],
                        rules,
                        false,
                        false
                    );
                }

                break;
            case "panels":
                yield return new TableBlock(
                    [Row(category, level, category, level)],
                    [
                        .. limits
                            .Take(9)
                            .Zip(limits.Skip(9))
                            .Select(p =>
                                Row(word + p.First.Category, Shown(p.First.Limit), word + p.Second.Category, Shown(p.Second.Limit))
                            ),
                    ],
                    [25, 25, 25, 25],
                    rules,
                    false,
                    true
                );
                break;
            case "wrapped":
                yield return new TableBlock(
                    [Row(category, words.First("colName"), level)],
                    [.. limits.Select(l => Row(word + l.Category, description, Shown(l.Limit)))],
                    [20, 40, 30],
                    rules,
                    dice.Next(2) == 0,
                    true
                );
                break;
            default:
                yield return new TableBlock(
                    [Row(category, level)],
                    [.. limits.Select(l => Row(word + l.Category, Shown(l.Limit)))],
                    [30, 30],
                    rules,
                    false,
                    true
                );
                break;
        }
    }
}
