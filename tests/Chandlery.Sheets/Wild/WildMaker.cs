using System.Globalization;

namespace Chandlery.Sheets.Wild;

/// <summary>Makes random documents whose truth is known.</summary>
/// <param name="substances">Substances to take names, numbers and classes from.</param>
/// <param name="data">Texts by path relative to <c>data/</c>.</param>
public sealed class WildMaker(IReadOnlyList<SheetSubstance> substances, IReadOnlyDictionary<string, string> data)
{
    // Documents of earlier seeds stay what they were when forms are added.
    private const int FirstWithLaterForms = 200_000;
    private const int EarlyForms = 8;
    private static readonly int Forms = Enum.GetValues<CompositionForm>().Length;
    private static readonly string[] Products =
    [
        "Dune Grass",
        "Pine & Peat",
        "Night Fig",
        "Harbour Rain 7",
        "Tonka Noir",
        "Lime Kiln",
        "Amber Fold",
    ];
    private static readonly string[] Suppliers =
    [
        "Hollin Aroma Works",
        "Corran Scent Supplies Ltd",
        "Vael Fragrance House",
        "Brask & Ulm GmbH",
    ];

    /// <summary>The document of a seed.</summary>
    public WildSheet Make(int seed)
    {
        var dice = new Random(seed);
        var words = new WildWords(WildWords.Languages[dice.Next(WildWords.Languages.Count)], data);
        return (seed / 2 % 10) switch
        {
            8 => new WildCertificate(dice, words).Make(seed),
            9 => new WildStatement(dice, words, [.. Pick(dice, 4 + dice.Next(14)).Select(e => Ingredient(e, dice, false))]).Make(seed),
            _ => Sheet(seed, dice, words),
        };
    }

    private IEnumerable<SheetSubstance> Pick(Random dice, int count) => substances.OrderBy(_ => dice.Next()).Take(count);

    private WildSheet Sheet(int seed, Random dice, WildWords words)
    {
        CompositionForm form =
            dice.Next(3) == 0 ? CompositionForm.Columns : (CompositionForm)dice.Next(seed < FirstWithLaterForms ? EarlyForms : Forms);
        var composition = new Composition(dice, words, form);
        List<WildIngredient> all =
        [
            .. Pick(dice, 2 + dice.Next(dice.Next(3) == 0 ? 30 : 10)).Select(e => Ingredient(e, dice, composition.HasRanges)),
        ];
        List<WildIngredient> told = [.. all.Select(composition.Told)];
        bool twoColumns = form is CompositionForm.Prose or CompositionForm.Labelled or CompositionForm.American && dice.Next(3) == 0;
        bool wide = !twoColumns && dice.Next(5) == 0;
        bool turned = wide && dice.Next(3) == 0;
        string product = $"{Products[dice.Next(Products.Length)]} {dice.Next(100, 999)}";
        var paper = new SheetForm(
            wide ? 297 : 210,
            wide ? 210 : 297,
            12 + dice.Next(8),
            twoColumns ? 7 : 7 + dice.Next(3),
            twoColumns ? 2 : 1,
            turned,
            dice.Next(2) == 0 ? $"{product} – {words.First("title")}" : "",
            dice.Next(2) == 0 ? $"{product} · {words.First("page")}" : ""
        );
        var head = new WildHead(dice, words, product, Suppliers[dice.Next(Suppliers.Length)]);
        var late = new WildLateSections(dice, words, told);
        bool inSection2 = dice.Next(15) == 0;
        var hazards = new WildHazards(dice, words);
        List<Block> blocks = [.. head.Title()];
        string sectionWord = words.Any("section", dice);
        bool worded = dice.Next(5) > 0;
        bool capitals = dice.Next(4) == 0;
        for (int s = 1; s <= 16; s++)
        {
            string titleOf = inSection2 && s is 2 or 3 && inSection2 ? $"{5 - s}" : $"{s}";
            string title = capitals ? words.Titles[titleOf].ToUpper(CultureInfo.InvariantCulture) : words.Titles[titleOf];
            string mark = dice.Next(2) == 0 ? ":" : ".";
            blocks.Add(new HeadingBlock(worded ? $"{sectionWord} {s}{mark} {title}" : $"{s}. {title}", 1));
            blocks.AddRange(
                titleOf switch
                {
                    "1" => head.Identification(),
                    "2" => hazards.Blocks(s),
                    "3" =>
                    [
                        new HeadingBlock($"{s}.2 {words.Titles["3.2"]}", 2),
                        new ParagraphBlock([words.First("mixture")]),
                        .. composition.Blocks(told),
                        new ParagraphBlock([words.First("fullText")]),
                    ],
                    "8" => late.Exposure(),
                    "9" => late.Physical(),
                    "11" => late.Toxicity(),
                    "12" => late.Ecology(),
                    "15" => late.Regulatory(),
                    _ =>
                    [
                        new HeadingBlock($"{s}.1 {words.Titles.GetValueOrDefault($"{s}.1", "")}", 2),
                        new ParagraphBlock([words.First("mild")]),
                    ],
                }
            );
        }

        string layout =
            composition.Layout + (twoColumns ? " two-column page" : "") + (turned ? " turned" : "") + (inSection2 ? " in section 2" : "");
        var truth = new WildTruth(
            product,
            head.ToldSupplier,
            head.ToldDocument,
            head.ToldVersion,
            head.Revised,
            hazards.Told,
            late.Told,
            late.Flash,
            late.Density,
            []
        );
        return new WildSheet(seed, "sheet", layout, words.Language, paper, blocks, truth);
    }

    private static WildIngredient Ingredient(SheetSubstance entry, Random dice, bool rangesOnly)
    {
        IReadOnlyList<string> classes = entry.Classes;
        bool acute = classes.Any(c => c.StartsWith("Aquatic Acute 1", StringComparison.Ordinal));
        bool chronic = classes.Any(c => c.StartsWith("Aquatic Chronic 1", StringComparison.Ordinal));
        string? sensitiser = classes.FirstOrDefault(c => c.StartsWith("Skin Sens. 1", StringComparison.Ordinal));
        return new WildIngredient(
            entry.Name,
            entry.Cas,
            entry.Ec,
            WildShare.Any(dice, rangesOnly),
            classes,
            sensitiser is not null && dice.Next(6) == 0 ? [sensitiser + ": C >= 0.01 %"] : [],
            acute && dice.Next(2) == 0 ? Math.Pow(10, dice.Next(3)) : null,
            chronic && dice.Next(2) == 0 ? Math.Pow(10, dice.Next(2)) : null,
            dice.Next(6) == 0 ? 300 + dice.Next(1700) : null
        );
    }
}
