namespace Chandlery.Sheets.Wild;

/// <summary>Sets the ingredients of a random sheet.</summary>
/// <param name="dice">Random numbers.</param>
/// <param name="words">Words.</param>
/// <param name="form">How they are set.</param>
public sealed class Composition(Random dice, WildWords words, CompositionForm form)
{
    private const int MostOnASide = 3;
    private readonly int shareStyle = dice.Next(9);
    private readonly int classStyle = dice.Next(5);
    private readonly bool hasTwoShares = form == CompositionForm.Columns && dice.Next(4) == 0;
    private readonly bool isPpm = form == CompositionForm.Columns && dice.Next(12) == 0;
    private readonly bool hasEc = form is not (CompositionForm.American or CompositionForm.CasWithShare) && dice.Next(5) > 0;
    private readonly bool hasReach = dice.Next(3) == 0;
    private readonly bool hasRowNumbers = form is CompositionForm.Columns or CompositionForm.American && dice.Next(4) == 0;
    private readonly bool hasStatements = form == CompositionForm.Columns && dice.Next(3) == 0;
    private readonly bool isMiddle = dice.Next(5) == 0;
    private readonly int extras = dice.Next(5);
    private readonly string ateWords = words.Any("ateOral", dice);
    private readonly string mWords = words.Any("m", dice);
    private readonly string casWords = words.Any("colCas", dice);
    private readonly string ecWords = words.Any("colEc", dice);
    private readonly string reachWords = words.Any("colReach", dice);

    /// <summary>Name of the layout, for counting.</summary>
    public string Layout =>
        form
        + (
            isPpm ? " ppm"
            : hasTwoShares ? " min/max"
            : ""
        )
        + (HasExtrasUnder ? " lines under" : "")
        + (hasRowNumbers ? " numbered" : "");

    /// <summary>True when M-factors, limits and estimates stand in the composition.</summary>
    public bool HasExtras => form is not (CompositionForm.American or CompositionForm.OldAndNew) && extras > 0;

    private bool HasExtrasUnder => HasExtras && form == CompositionForm.Columns && extras is 3 or 4 && form == CompositionForm.Columns;

    public bool HasRanges => hasTwoShares;

    /// <summary>What the composition says of an ingredient, without what is not printed in this form.</summary>
    public WildIngredient Told(WildIngredient i) =>
        i with
        {
            Ec = hasEc ? i.Ec : null,
            Classes = form == CompositionForm.American ? null : i.Classes,
            Limits = HasExtras ? i.Limits : [],
            AcuteM = HasExtras ? i.AcuteM : null,
            ChronicM = HasExtras ? i.ChronicM : null,
            OralMgPerKg = HasExtras ? i.OralMgPerKg : null,
        };

    public IReadOnlyList<Block> Blocks(IReadOnlyList<WildIngredient> ingredients) =>
        form switch
        {
            CompositionForm.Prose => [new ParagraphBlock([.. ingredients.Select(Sentence)])],
            CompositionForm.Labelled => [.. ingredients.Select(i => new ParagraphBlock([.. Labels(i, true), ""]))],
            CompositionForm.Cards => [Cards(ingredients)],
            CompositionForm.OnItsSide => [.. ingredients.Chunk(MostOnASide).Select(OnItsSide)],
            CompositionForm.Leaders => [new ParagraphBlock([.. ingredients.SelectMany(Led)])],
            _ => [Table(ingredients)],
        };

    private string Sentence(WildIngredient i)
    {
        string ec = i.Ec is null ? "" : $", {ecWords}: {i.Ec}";
        string classes = Classes(i, "; ");
        return $"{i.Name} ({casWords}: {i.Cas}{ec}): {Share(i)}{(classes.Length > 0 ? "; " + classes : "")}{Joined(Extras(i), "; ")}".Replace(
            '\n',
            ' '
        );
    }

    private IEnumerable<string> Led(WildIngredient i)
    {
        string ec = i.Ec is null ? "" : $", {ecWords}: {i.Ec}";
        string said = (Classes(i, "; ") + Joined(Extras(i), "; ")).TrimStart(';', ' ');
        yield return $"{i.Name} ({casWords}: {i.Cas}{ec}) {string.Concat(Enumerable.Repeat(". ", 4 + (i.Name.Length % 7)))}{Share(i)}".Replace(
            '\n',
            ' '
        );
        if (said.Length > 0)
        {
            yield return said;
        }
    }

    private TableBlock Cards(IReadOnlyList<WildIngredient> ingredients) =>
        new(
            [],
            [
                .. ingredients
                    .Chunk(2)
                    .Select(pair => pair.Select(i => new TableCell([.. Labels(i, false)])).ToList())
                    .Select(cells => cells.Count == 2 ? cells : [.. cells, TableCell.Of("")]),
            ],
            [50, 50],
            dice.Next(2) == 0 ? TableRules.Grid : TableRules.None,
            false,
            false
        );

    private TableBlock OnItsSide(IReadOnlyList<WildIngredient> ingredients)
    {
        List<string> kinds = ["name", "cas", .. hasEc ? new[] { "ec" } : [], "share", "classes"];
        return new TableBlock(
            [],
            [
                .. kinds.Select(k =>
                    (IReadOnlyList<TableCell>)[TableCell.Of(Head(k)), .. ingredients.Select((i, at) => TableCell.Of(Cell(k, i, at)))]
                ),
            ],
            [20, .. ingredients.Select(_ => 30.0)],
            hasReach ? TableRules.Grid : TableRules.Level,
            isMiddle,
            false
        );
    }

    private IEnumerable<string> Labels(WildIngredient i, bool labelsName)
    {
        List<string> lines = [labelsName ? $"{words.First("colName")}: {i.Name}" : i.Name, $"{casWords}: {i.Cas}"];
        if (i.Ec is not null)
        {
            lines.Add($"{ecWords}: {i.Ec}");
        }

        lines.Add($"{words.First("colShare").Split(" (")[0]}: {Share(i).Replace('\n', ' ')}");
        lines.Add($"{words.First("colClasses")}: {Classes(i, "; ")}");
        lines.AddRange(Extras(i));
        return lines;
    }

    private static string Joined(IReadOnlyList<string> texts, string mark) => string.Concat(texts.Select(t => mark + t));

    private string Share(WildIngredient i) => isPpm ? i.Share.Ppm() : i.Share.Print(shareStyle, words);

    private string Classes(WildIngredient i, string mark)
    {
        if (i.Classes is null)
        {
            return "";
        }

        return i.Classes.Count == 0
            ? words.First("notClassified")
            : string.Join(
                mark,
                i.Classes.Select(c =>
                    c.Split(", ") is [var name, var code]
                        ? classStyle switch
                        {
                            0 => $"{name}, {code}",
                            1 => $"{name} - {code}",
                            2 => $"{code} {name}",
                            3 => $"{name} ({code})",
                            _ => $"{name}; {code}",
                        }
                        : c
                )
            );
    }

    private List<string> Extras(WildIngredient i)
    {
        List<string> lines = [];
        if (!HasExtras)
        {
            return lines;
        }

        lines.AddRange(
            i.Limits.Select(l =>
                words.HasDecimalComma ? l.Replace("0.", "0,", StringComparison.Ordinal).Replace(">=", "≥", StringComparison.Ordinal) : l
            )
        );
        if (i.AcuteM is { } a)
        {
            lines.Add($"{mWords} ({words.First("acute")}) = {a}");
        }

        if (i.ChronicM is { } c)
        {
            lines.Add($"{mWords} ({words.First("chronic")}) = {c}");
        }

        if (i.OralMgPerKg is { } ate)
        {
            lines.Add($"{ateWords}: {ate} mg/kg");
        }

        return lines;
    }

    private TableBlock Table(IReadOnlyList<WildIngredient> ingredients)
    {
        List<string> kinds = Kinds();
        var rows = new List<IReadOnlyList<TableCell>>();
        foreach ((WildIngredient i, int at) in ingredients.Select((i, at) => (i, at)))
        {
            if (form == CompositionForm.Groups && (at == 0 || at == ingredients.Count / 2))
            {
                rows.Add([new TableCell([words.Any("group", dice)], kinds.Count)]);
            }

            rows.Add([.. kinds.Select(k => TableCell.Of(Cell(k, i, at)))]);
            List<string> under = HasExtrasUnder ? Extras(i) : [];
            if (under.Count > 0)
            {
                rows.Add(
                    extras == 3
                        ? [new TableCell([string.Join("; ", under)], kinds.Count)]
                        : [.. kinds.Select(k => k == "name" ? new TableCell(under) : TableCell.Of(""))]
                );
            }
        }

        return new TableBlock(
            [
                [.. kinds.Select(k => TableCell.Of(Head(k)))],
            ],
            rows,
            [.. kinds.Select(Width)],
            form == CompositionForm.Groups ? TableRules.Level : (TableRules)dice.Next(4),
            isMiddle,
            dice.Next(3) > 0
        );
    }

    private List<string> Kinds()
    {
        List<string> share = hasTwoShares ? ["min", "max"] : ["share"];
        List<string> kinds = form switch
        {
            CompositionForm.Stacked => ["stack", .. share, "classes"],
            CompositionForm.Groups => ["under", .. share, "classes"],
            CompositionForm.Numbers => ["numbers", "name", .. share, "classes"],
            CompositionForm.CasWithShare => ["name", "casShare", "classes"],
            CompositionForm.American => ["name", "cas", "share"],
            CompositionForm.OldAndNew => ["name", "cas", "share", "old", "classes"],
            _ => ["name", "cas", "share", "classes"],
        };
        if (form == CompositionForm.Columns)
        {
            if (hasEc)
            {
                kinds.Add("ec");
            }

            if (hasReach)
            {
                kinds.Add("reach");
            }

            if (hasStatements)
            {
                kinds.Add("statements");
            }

            if (HasExtras && extras == 2)
            {
                kinds.Add("limits");
            }
        }
        else if (hasEc && form is CompositionForm.OldAndNew)
        {
            kinds.Add("ec");
        }

        kinds = [.. kinds.OrderBy(_ => dice.Next())];
        int at = kinds.IndexOf("share");
        if (hasTwoShares && at >= 0)
        {
            kinds.RemoveAt(at);
            kinds.InsertRange(at, ["min", "max"]);
        }

        if (hasRowNumbers)
        {
            kinds.Insert(0, "number");
        }

        return kinds;
    }

    private readonly Dictionary<string, string> heads = [];

    private string Head(string kind)
    {
        if (!heads.TryGetValue(kind, out string? text))
        {
            heads[kind] = text = kind switch
            {
                "name" => words.Any("colName", dice),
                "cas" => casWords,
                "ec" => ecWords,
                "reach" => reachWords,
                "share" => isPpm ? words.Any("colSharePpm", dice)
                : shareStyle == 3 ? "x = " + words.Any("colShare", dice)
                : words.Any("colShare", dice),
                "min" => words.Any("colMin", dice),
                "max" => words.Any("colMax", dice),
                "classes" => words.Any("colClasses", dice),
                "old" => words.First("colOld"),
                "statements" => words.Any("colStatements", dice),
                "limits" => words.First("colLimits"),
                "stack" or "under" => words.Any("colName", dice),
                "numbers" => dice.Next(2) == 0
                    ? $"{casWords}\n{ecWords}\n{reachWords}"
                    : $"{words.First("colIndex")}\n{ecWords}\n{casWords}\n{reachWords}",
                "casShare" => $"{casWords} /\n{words.Any("colShare", dice)}",
                _ => dice.Next(2) == 0 ? "#" : "",
            };
        }

        return text;
    }

    private static double Width(string kind) =>
        kind switch
        {
            "name" => 34,
            "stack" or "under" => 44,
            "classes" => 36,
            "limits" => 36,
            "statements" => 16,
            "old" => 18,
            "number" => 6,
            "min" or "max" => 13,
            "cas" or "ec" => 18,
            _ => 22,
        };

    private string Cell(string kind, WildIngredient i, int at)
    {
        string reach = $"01-21194{at % 100000:00000}-{(at * 7 % 90) + 10}-0000";
        switch (kind)
        {
            case "number":
                return $"{at + 1}";
            case "name":
                return i.Name;
            case "cas":
                return i.Cas;
            case "ec":
                return i.Ec ?? "-";
            case "reach":
                return reach;
            case "share":
                return Share(i);
            case "min":
                return WildShare.Figure(i.Share.Low, 0, words);
            case "max":
                return (i.Share.IsOpen ? "< " : "") + WildShare.Figure(i.Share.High, 0, words);
            case "classes":
                return ClassesCell(i);
            case "statements":
                return i.Classes is null ? "" : string.Join("\n", i.Classes.Select(c => c.Split(", ")[^1]));
            case "old":
                return i.Classes is { Count: > 0 } ? (at % 2 == 0 ? "Xi; R38-43" : "N; R51/53") : "-";
            case "limits":
                return Joined(Extras(i), "\n").TrimStart('\n');
            case "stack":
                return $"{i.Name}\n{casWords}: {i.Cas}{(i.Ec is null ? "" : $"\n{ecWords}: {i.Ec}")}{(hasReach ? $"\n{reachWords}: {reach}" : "")}";
            case "under":
                return $"{i.Name}\n{casWords} {i.Cas}{(i.Ec is null ? "" : $" \u00b7 {ecWords} {i.Ec}")}";
            case "numbers":
                return Head("numbers").StartsWith(casWords, StringComparison.Ordinal)
                    ? $"{i.Cas}\n{i.Ec ?? "-"}\n{reach}"
                    : $"601-0{(at % 90) + 10}-00-{at % 9}\n{i.Ec ?? "-"}\n{i.Cas}\n{reach}";
            default:
                return $"{i.Cas}\n{Share(i)}";
        }
    }

    private string ClassesCell(WildIngredient i)
    {
        string text = hasStatements
            ? i.Classes is { Count: > 0 }
                ? string.Join("\n", i.Classes.Select(c => c.Split(", ")[0]))
                : Classes(i, "")
            : Classes(i, dice.Next(2) == 0 ? "; " : "\n");
        bool inClasses = HasExtras && !(form == CompositionForm.Columns && extras >= 2);
        return inClasses ? text + Joined(Extras(i), "\n") : text;
    }
}
