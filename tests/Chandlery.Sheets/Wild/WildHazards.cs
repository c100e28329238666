namespace Chandlery.Sheets.Wild;

/// <summary>Section 2 of a random sheet.</summary>
public sealed class WildHazards
{
    private static readonly (string Name, string Code, string Statement, string Category, string Old)[] Known =
    [
        ("skinIrrit", "Skin Irrit. 2", "H315", "2", "Xi; R38"),
        ("eyeIrrit", "Eye Irrit. 2", "H319", "2", "Xi; R36"),
        ("skinSens", "Skin Sens. 1", "H317", "1", "R43"),
        ("aspTox", "Asp. Tox. 1", "H304", "1", "Xn; R65"),
        ("aquaChronic", "Aquatic Chronic 2", "H411", "2", "N; R51/53"),
        ("aquaChronic", "Aquatic Chronic 3", "H412", "3", "R52/53"),
    ];

    private readonly Random dice;
    private readonly WildWords words;
    private readonly List<(string Name, string Code, string Statement, string Category, string Old)> chosen;

    public WildHazards(Random dice, WildWords words)
    {
        (this.dice, this.words) = (dice, words);
        chosen = [.. Known.Where(_ => dice.Next(2) == 0).DistinctBy(k => k.Name)];
    }

    public IReadOnlyList<string>? Told => chosen.Count == 0 ? null : [.. chosen.Select(c => $"{c.Code}, {c.Statement}")];

    public IEnumerable<Block> Blocks(int section)
    {
        yield return new HeadingBlock($"{section}.1 {words.Titles["2.1"]}", 2);
        string category = words.Any("category", dice);
        if (chosen.Count > 0)
        {
            yield return dice.Next(6) switch
            {
                0 => new ParagraphBlock([.. chosen.Select(c => $"{c.Code}, {c.Statement}")]),
                1 => new ParagraphBlock([string.Join("; ", chosen.Select(c => $"{c.Code} - {c.Statement}"))]),
                2 => new ParagraphBlock([.. chosen.Select(c => $"{words.First(c.Name)}, {category} {c.Category}, {c.Statement}")]),
                3 => Table(
                    [words.First("hazardClass"), category, words.First("colStatements")],
                    chosen.Select(c => new[] { words.First(c.Name), $"{category} {c.Category}", c.Statement })
                ),
                4 => Table(
                    [words.First("colClasses"), words.First("colOld")],
                    chosen.Select(c => new[] { $"{c.Code}; {c.Statement}", c.Old })
                ),
                _ => new ParagraphBlock([.. chosen.Select(c => $"{c.Code} ({c.Statement})")]),
            };
        }

        yield return new HeadingBlock($"{section}.2 {words.Titles["2.2"]}", 2);
        yield return new ParagraphBlock(["GHS07", .. chosen.Select(c => c.Statement)]);
    }

    private TableBlock Table(string[] head, IEnumerable<string[]> rows) =>
        new(
            [
                [.. head.Select(TableCell.Of)],
            ],
            [.. rows.Select(r => (IReadOnlyList<TableCell>)[.. r.Select(TableCell.Of)])],
            [.. head.Select(_ => 30.0)],
            (TableRules)dice.Next(4),
            false,
            true
        );
}
