using System.Globalization;

namespace Chandlery.Sheets.Wild;

/// <summary>Sections 8, 9, 11, 12 and 15 of a random sheet: values that belong to an ingredient, and others that do not.</summary>
public sealed class WildLateSections
{
    private readonly Random dice;
    private readonly WildWords words;
    private readonly List<WildIngredient> ingredients;
    private readonly Dictionary<string, (double Oral, string Printed)> oral = [];
    private readonly HashSet<string> factors = [];
    private readonly List<WildIngredient> named;
    private readonly double flash;
    private readonly bool isAbove;
    private readonly double density;
    private readonly bool hasNumbers;
    private readonly int form;

    public WildLateSections(Random dice, WildWords words, IReadOnlyList<WildIngredient> told)
    {
        (this.dice, this.words) = (dice, words);
        ingredients = [.. told];
        flash = 40 + dice.Next(60);
        isAbove = dice.Next(4) == 0;
        density = Math.Round(0.9 + (dice.NextDouble() * 0.15), 3);
        hasNumbers = dice.Next(2) == 0;
        form = dice.Next(3);
        named = [.. told.Take(5).Where(_ => dice.Next(3) > 0)];
        foreach (WildIngredient i in named.Where(i => i.OralMgPerKg is null))
        {
            int value = 1100 + (10 * dice.Next(300));
            switch (dice.Next(4))
            {
                case 0:
                    oral[i.Cas] = (double.NaN, "> 5000 mg/kg");
                    break;
                case 1:
                    oral[i.Cas] = (value, Thousands(value) + " mg/kg");
                    break;
                default:
                    oral[i.Cas] = (value, $"{value} mg/kg");
                    break;
            }
        }

        foreach (WildIngredient i in named.Where(i => i.Classes is not null && i.AcuteM is null && i.ChronicM is null))
        {
            if (i.Classes!.Any(c => c.StartsWith("Aquatic Acute 1", StringComparison.Ordinal)) && dice.Next(2) == 0)
            {
                factors.Add(i.Cas);
            }
        }
    }

    private string Thousands(int value)
    {
        string mark = words.Language switch
        {
            "en" => ",",
            "fr" or "pl" => " ",
            _ => ".",
        };
        return $"{value / 1000}{mark}{value % 1000:000}";
    }

    public IReadOnlyList<WildIngredient> Told =>
        [
            .. ingredients.Select(i =>
                i with
                {
                    OralMgPerKg = i.OralMgPerKg ?? (oral.TryGetValue(i.Cas, out var o) && !double.IsNaN(o.Oral) ? o.Oral : null),
                    AcuteM = i.AcuteM ?? (factors.Contains(i.Cas) ? 10 : null),
                }
            ),
        ];

    public string Flash => $"{isAbove} {flash.ToString(CultureInfo.InvariantCulture)}";

    public string Density => density.ToString(CultureInfo.InvariantCulture);

    public IEnumerable<Block> Exposure()
    {
        yield return new HeadingBlock($"8.1 {words.Titles["8.1"]}", 2);
        if (ingredients.Count > 2 && dice.Next(2) == 0)
        {
            yield return new TableBlock(
                [
                    [.. new[] { words.First("colName"), words.First("colCas"), words.First("limitValue") }.Select(TableCell.Of)],
                ],
                [
                    .. ingredients
                        .Take(2)
                        .Select(
                            (i, at) =>
                                (IReadOnlyList<TableCell>)
                                    [TableCell.Of(i.Name), TableCell.Of(i.Cas), TableCell.Of($"{5 + at} ppm; {20 + at} mg/m³")]
                        ),
                    [TableCell.Of("Propan-2-ol"), TableCell.Of("67-63-0"), TableCell.Of("200 ppm; 500 mg/m³")],
                ],
                [34, 18, 30],
                (TableRules)dice.Next(4),
                false,
                true
            );
        }
    }

    public IEnumerable<Block> Physical()
    {
        yield return new HeadingBlock($"9.1 {words.Titles["9.1"]}", 2);
        string sign = isAbove ? "> " : "";
        List<(string Label, string Value)> pairs =
        [
            ("pH", "-"),
            (words.Any("flash", dice), $"{sign}{flash.ToString(CultureInfo.InvariantCulture)} °C ({words.Any("closedCup", dice)})"),
            (words.Any("density", dice), $"{WildShare.Figure(density, 0, words)} g/cm³ (20 °C)"),
        ];
        yield return dice.Next(2) == 0
            ? new ParagraphBlock([.. pairs.Select(p => $"{p.Label}: {p.Value}")])
            : new TableBlock(
                [],
                [.. pairs.Select(p => (IReadOnlyList<TableCell>)[TableCell.Of(p.Label), TableCell.Of(p.Value)])],
                [40, 60],
                TableRules.None,
                false,
                false
            );
    }

    public IEnumerable<Block> Toxicity()
    {
        yield return new HeadingBlock($"11.1 {words.Titles["11.1"]}", 2);
        yield return new ParagraphBlock([words.First("acuteToxicity")]);
        string ld = words.Any("ldOral", dice);
        List<WildIngredient> with = [.. named.Where(i => oral.ContainsKey(i.Cas))];
        string Heading(WildIngredient i) => hasNumbers ? $"{i.Name} ({i.Cas})" : i.Name;
        if (with.Count == 0)
        {
            yield break;
        }

        if (form == 0)
        {
            yield return new TableBlock(
                [],
                [
                    .. with.Select(i =>
                        (IReadOnlyList<TableCell>)[TableCell.Of(Heading(i)), TableCell.Of(ld), TableCell.Of(oral[i.Cas].Printed)]
                    ),
                ],
                [40, 26, 24],
                (TableRules)dice.Next(4),
                false,
                false
            );
        }
        else
        {
            foreach (WildIngredient i in with)
            {
                List<string> lines = [$"{ld}: {oral[i.Cas].Printed}"];
                if (form == 2)
                {
                    lines.Add($"{words.First("ldDermal")}: > 5000 mg/kg");
                }

                yield return new ParagraphBlock([Heading(i), .. lines]);
            }
        }
    }

    public IEnumerable<Block> Ecology()
    {
        yield return new HeadingBlock($"12.1 {words.Titles["12.1"]}", 2);
        foreach (WildIngredient i in named)
        {
            List<string> lines = [i.Name, $"{words.First("fish")}: {WildShare.Figure(0.1 + dice.Next(90), 0, words)} mg/l"];
            if (factors.Contains(i.Cas))
            {
                lines.Add($"{words.First("m")} ({words.First("acute")}) = 10");
            }

            yield return new ParagraphBlock(lines);
        }
    }

    public IEnumerable<Block> Regulatory()
    {
        yield return new HeadingBlock($"15.1 {words.Titles["15.1"]}", 2);
        if (ingredients.Count > 0 && dice.Next(3) == 0)
        {
            yield return new ParagraphBlock([$"{words.First("colCas")} {ingredients[0].Cas}: -"]);
        }
    }
}
