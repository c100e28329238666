using System.Globalization;

namespace Chandlery.Sheets.Wild;

/// <summary>The head and section 1 of a random sheet, with dates that are not the revision's.</summary>
public sealed class WildHead
{
    private readonly Random dice;
    private readonly WildWords words;
    private readonly string product;
    private readonly string supplier;
    private readonly string document;
    private readonly string version;
    private readonly int form;
    private readonly int supplierForm;
    private readonly bool inTitle;

    public WildHead(Random dice, WildWords words, string product, string supplier)
    {
        (this.dice, this.words, this.product, this.supplier) = (dice, words, product, supplier);
        document = $"{(char)('A' + dice.Next(26))}{(char)('A' + dice.Next(26))}-{dice.Next(1000, 9999)}";
        version = dice.Next(2) == 0 ? $"{dice.Next(1, 12)}" : $"{dice.Next(1, 9)}.{dice.Next(10)}";
        Revised = new DateOnly(2022 + dice.Next(5), 1 + dice.Next(12), 13 + dice.Next(15));
        form = dice.Next(4);
        supplierForm = dice.Next(3);
        inTitle = dice.Next(2) == 0;
    }

    public DateOnly Revised { get; }

    public string ToldSupplier => supplier;

    public string? ToldDocument => form == 3 ? null : document;

    public string? ToldVersion => form == 2 ? null : version;

    public IEnumerable<Block> Title() =>
        inTitle
            ? [new ParagraphBlock([words.Any("title", dice), product]), .. Dates()]
            : [new ParagraphBlock([words.Any("title", dice)]), .. Dates()];

    private IEnumerable<Block> Dates()
    {
        int dateStyle = dice.Next(3);
        string Date(DateOnly day) =>
            dateStyle switch
            {
                0 => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
                1 => day.ToString("dd.MM.yyyy", CultureInfo.InvariantCulture),
                _ => day.ToString("dd/MM/yyyy", CultureInfo.InvariantCulture),
            };
        List<(string Label, string Value)> pairs = [(words.Any("revised", dice), Date(Revised))];
        if (dice.Next(2) == 0)
        {
            pairs.Add((words.Any("created", dice), Date(Revised.AddDays(-500 - dice.Next(900)))));
        }

        if (dice.Next(2) == 0)
        {
            pairs.Add((words.Any("printed", dice), Date(Revised.AddDays(20 + dice.Next(90)))));
        }

        if (dice.Next(3) == 0)
        {
            pairs.Add((words.First("supersedes"), Date(Revised.AddDays(-200 - dice.Next(200)))));
        }

        if (ToldVersion is not null)
        {
            pairs.Add((words.First("version"), version));
        }

        if (ToldDocument is not null)
        {
            pairs.Add((words.Any("document", dice), document));
        }

        pairs = [.. pairs.OrderBy(_ => dice.Next())];
        return form switch
        {
            0 => [new ParagraphBlock([.. pairs.Select(p => $"{p.Label}: {p.Value}")])],
            1 => [Values(pairs)],
            _ => [new ParagraphBlock([.. pairs.Chunk(2).Select(c => string.Join("     ", c.Select(p => $"{p.Label}: {p.Value}")))])],
        };
    }

    private static TableBlock Values(IEnumerable<(string Label, string Value)> pairs) =>
        new(
            [],
            [.. pairs.Select(p => (IReadOnlyList<TableCell>)[TableCell.Of(p.Label), TableCell.Of(p.Value)])],
            [40, 60],
            TableRules.None,
            false,
            false
        );

    public IEnumerable<Block> Identification()
    {
        string name = words.Any("name", dice);
        string label = words.Any("supplier", dice);
        yield return new HeadingBlock($"1.1 {words.Titles["1.1"]}", 2);
        yield return form == 1 ? Values([(name, product)]) : new ParagraphBlock([$"{name}: {product}"]);
        yield return new HeadingBlock($"1.2 {words.Titles["1.2"]}", 2);
        yield return new ParagraphBlock([words.First("mixture")]);
        yield return new HeadingBlock($"1.3 {words.Titles["1.3"]}", 2);
        yield return supplierForm switch
        {
            0 => Values([(label + ":", supplier), ("", "Tallow Lane 4"), ("", "+353 1 555 0199")]),
            1 => new ParagraphBlock([$"{label}: {supplier}", "Tallow Lane 4", "+353 1 555 0199"]),
            _ => new ParagraphBlock([label + ":", supplier, "Tallow Lane 4", "+353 1 555 0199"]),
        };
        yield return new HeadingBlock($"1.4 {words.Titles["1.4"]}", 2);
        yield return new ParagraphBlock(["+353 1 555 0112"]);
    }
}
