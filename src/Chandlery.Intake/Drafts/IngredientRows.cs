using System.Text.RegularExpressions;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Tables;
using Chandlery.Intake.Wording;
using Chandlery.Yaml;

namespace Chandlery.Intake.Drafts;

/// <summary>Turns the rows of a table into ingredients.</summary>
/// <param name="wording">How labels and shares are written.</param>
/// <param name="hazards">How classes are written.</param>
/// <param name="document">The document's number among those of the draft.</param>
/// <param name="givesClasses">
/// False for a statement of allergens, of which no row tells classes: the draft says so once, and nothing is amiss with the row.
/// </param>
internal sealed partial class IngredientRows(SheetWording wording, HazardText hazards, int document, bool givesClasses = true)
{
    /// <summary>The doubt of rows that say that a substance is absent.</summary>
    public const string Absent = "the document says that it is absent";

    private static readonly string[] IdentifyingKinds = [ColumnKind.Cas, ColumnKind.Ec, ColumnKind.Name];
    private static readonly string[] NeverIdentifying =
    [
        ColumnKind.Classes,
        ColumnKind.Statements,
        ColumnKind.Limits,
        ColumnKind.M,
        ColumnKind.Ate,
        ColumnKind.Old,
    ];
    private const int ShortestNoteLabel = 2;
    private static readonly string[] NoteLabels = ["ate", "m", "limits"];
    private readonly NumberLabels labels = new(wording);

    /// <summary>One ingredient for each row.</summary>
    /// <param name="table">The table.</param>
    /// <param name="isAbsent">Tells shares that say that there is nothing of it; such rows are doubted with <see cref="Absent"/>.</param>
    public IEnumerable<DraftIngredient> Of(Table table, Func<string, bool>? isAbsent = null)
    {
        var all = new List<DraftIngredient>();
        var names = NameColumn.Of(table);
        foreach (Row row in table.Rows)
        {
            if (Of(table, row, names) is not { } ingredient)
            {
                continue;
            }

            if (ingredient is { Cas: null, Ec: null, Name.Value: "" } && all.Count > 0)
            {
                all[^1] = all[^1] with
                {
                    Doubts = [.. all[^1].Doubts, "under it stands a row without name and number, which may be its end"],
                };
            }

            if (HoldsNote(ingredient.Name.Value) && all.Count > 0)
            {
                all[^1] = all[^1] with { Doubts = [.. all[^1].Doubts, "the name under it seems to hold a note, which may be its"] };
            }

            if (ingredient is { Cas: { } more, Name.Value: "", Share: null } && all.Count > 0 && all[^1].Cas is { } first)
            {
                all[^1] = all[^1] with { Cas = first.Doubted($"the row gives several CAS numbers: {first.Value}, {more.Value}") };
                continue;
            }

            bool absent = isAbsent is not null && table.CellOf(row, ColumnKind.Share) is { } share && isAbsent(share.Text);
            all.Add(absent ? ingredient with { Doubts = [.. ingredient.Doubts, Absent] } : ingredient);
        }

        return all;
    }

    /// <summary>An ingredient from texts that stand beside labels instead of in a table.</summary>
    /// <param name="parts">Lines by kind of column.</param>
    public DraftIngredient? Of(IReadOnlyDictionary<string, Cell> parts)
    {
        var columns = parts.Keys.Select(k => new Column([k], "")).ToList();
        int page = parts.Values.SelectMany(c => c.Lines).First().Page;
        var row = new Row(page, [.. parts.Values], [], []);
        var table = new Table(columns, [row]);
        return Of(table, row, NameColumn.Of(table));
    }

    private DraftIngredient? Of(Table table, Row row, NameColumn names)
    {
        if (row.Cells.All(c => c.Lines.Count == 0))
        {
            return null;
        }

        Cell? nameCell = names.At < 0 ? null : row.Cells[names.At];
        List<Cell> identifying =
        [
            .. IdentifyingKinds.Select(k => table.CellOf(row, k)).OfType<Cell>(),
            .. row.Cells.Where((_, i) => !table.Columns[i].Kinds.Intersect(NeverIdentifying).Any()),
        ];
        identifying = [.. identifying.Distinct()];
        var doubts = new List<string>(row.Doubts);
        if (table.IsByShape)
        {
            doubts.Add("the table has no heading: what its columns hold was told from what stands in them");
        }

        Found<string>? cas = Number(
            table.CellOf(row, ColumnKind.Cas),
            identifying,
            row,
            ColumnKind.CasPattern(),
            CasNumber.Parse,
            "CAS",
            IsOnly(table, ColumnKind.Cas)
        );
        Found<string>? ec = Number(
            table.CellOf(row, ColumnKind.Ec),
            identifying,
            row,
            NumberLabels.EcPattern(),
            EcNumber.Parse,
            "EC",
            IsOnly(table, ColumnKind.Ec)
        );
        double edge = names.RightEdge;
        (string nameText, string notes) = NameAndNotes(nameCell, edge);
        Found<string> name = Name(nameCell, nameText, row);
        if (nameCell is not null && nameCell.Lines.Zip(nameCell.Lines.Skip(1)).Any(p => BrokenWords.IsBroken(p.First, p.Second, edge)))
        {
            name = name.Doubted("a line of the name is full to its column's edge: the column may have broken a word");
        }

        if (nameCell is not null && BeginsAbove(nameCell, row))
        {
            name = name.Doubted("the name's first line stands above the rest of its row: it may be the heading of several rows");
        }

        if (nameCell is not null && names.HoldsAnother(nameCell, labels))
        {
            name = name.Doubted("a line of the name begins as a name does: a heading or another name may stand in it");
        }

        if (HoldsNote(nameText))
        {
            doubts.Add("the name seems to hold a part of a note, of which the rest may stand elsewhere");
        }

        notes = string.Join(" ; ", row.Notes.Select(n => n.Text).Append(notes).Where(t => t.Length > 0));
        if (cas is null)
        {
            doubts.Add(ec is null ? "the row gives no CAS or EC number" : "the row gives an EC number but no CAS number");
        }

        for (int i = 0; i < table.Columns.Count; i++)
        {
            string said = row.Cells[i].Text;
            bool says = (said.Length > 1 && said.Any(char.IsLetterOrDigit)) || said.Any(c => c is '<' or '>' or '≤' or '≥');
            if (table.Columns[i].Kinds.Count == 0 && says)
            {
                doubts.Add($"the column '{table.Columns[i].Heading}' is not understood; it says '{row.Cells[i].Text}'");
            }
        }

        if (name.Value.Length == 0)
        {
            doubts.Add("the row gives no name: a part of it may stand in the row above");
        }
        else if (nameCell is not null && IsUnderNumber(nameCell))
        {
            doubts.Add("the name stands under a number: lines of two rows may be mixed");
        }

        if (LeadingNumber().IsMatch(name.Value))
        {
            doubts.Add("the name begins with a number, which may be the row's");
        }

        HazardReading inside = hazards.Read(name.Value);
        if (inside.Classes is { Count: > 0 } || inside.M is not null || inside.Limits.Count > 0 || inside.Toxicity.Count > 0)
        {
            doubts.Add("the name seems to hold more than a name");
        }

        HazardReading read = Hazards(table, row, notes, doubts, out Cell? where);
        doubts.AddRange(new RowLedger(wording, hazards).Unread(table, row, read));
        Found<T> At<T>(T value, Cell? cell, IReadOnlyList<string> own) => new(value, document, row.Page, BoxOf(cell, row), own);
        return new DraftIngredient
        {
            Name = name,
            Cas = cas,
            Ec = ec,
            Share = Share(table, row, doubts),
            Classes = read.Classes is null ? null : At(read.Classes, where, read.Doubts),
            Limits = read.Limits.Count == 0 ? null : At(read.Limits, table.CellOf(row, ColumnKind.Limits) ?? where, []),
            M = read.M is null ? null : At(read.M, table.CellOf(row, ColumnKind.M) ?? table.CellOf(row, ColumnKind.Limits) ?? where, []),
            Toxicity =
                read.Toxicity.Count == 0
                    ? null
                    : At(read.Toxicity, table.CellOf(row, ColumnKind.Ate) ?? table.CellOf(row, ColumnKind.Limits) ?? where, []),
            Doubts =
                read.Classes is not null ? doubts
                : givesClasses ? [.. doubts, "the sheet says nothing about its classes", .. read.Doubts]
                : [.. doubts, .. read.Doubts],
        };
    }

    // Where name and numbers share a cell, the name comes first.
    private bool IsUnderNumber(Cell cell)
    {
        List<TextLine> lines = [.. cell.Lines];
        int number = lines.FindIndex(l => ColumnKind.HasCas(l.Text));
        int name = lines.FindIndex(l => labels.Without(l.Text).Any(char.IsLetter));
        return number >= 0 && name > number;
    }

    // True for a column that holds nothing else.
    private static bool IsOnly(Table table, string kind) => table.Columns.FirstOrDefault(c => c.Kinds.Contains(kind)) is { Kinds.Count: 1 };

    private static Box BoxOf(Cell? cell, Row row) =>
        cell?.Lines.Where(l => l.Page == row.Page).ToList() is { Count: > 0 } lines ? Box.Around(lines.Select(l => l.Box)) : row.Box;

    private Found<string>? Number<T>(
        Cell? own,
        IReadOnlyList<Cell> identifying,
        Row row,
        Regex pattern,
        Func<string, Parsed<T>> parse,
        string what,
        bool isOnly
    )
        where T : class
    {
        foreach (Cell cell in own is null ? identifying : [own, .. identifying.Where(c => c != own)])
        {
            List<string> numbers =
            [
                .. pattern.Matches(NumberLabels.OtherNumbers().Replace(cell.Text, " ")).Select(m => m.Value).Distinct(),
            ];
            if (numbers.Count == 0)
            {
                continue;
            }

            var doubts = new List<string>();
            if (parse(numbers[0]).Reason is { } why)
            {
                doubts.Add(why);
            }

            if (numbers.Count > 1)
            {
                doubts.Add($"the row gives several {what} numbers: {string.Join(", ", numbers)}");
            }

            return new Found<string>(numbers[0], document, row.Page, BoxOf(cell, row), doubts);
        }

        // A narrow column may break a number anywhere; its check digit tells that the parts belong together.
        if (own is { Lines.Count: > 1 } && parse(string.Concat(own.Lines.Select(l => l.Text)).Trim()) is { Success: true })
        {
            return new Found<string>(string.Concat(own.Lines.Select(l => l.Text)).Trim(), document, row.Page, BoxOf(own, row), []);
        }

        return own is not null && own.Text.Any(char.IsAsciiDigit) && isOnly
            ? new Found<string>(own.Text, document, row.Page, BoxOf(own, row), [$"'{own.Text}' is no {what} number"])
            : null;
    }

    // The name's lines without numbers, and the lines under it that say classes, factors, limits or estimates.
    private (string Name, string Notes) NameAndNotes(Cell? cell, double edge)
    {
        if (cell is null)
        {
            return ("", "");
        }

        cell = new Cell(BrokenWords.Unbroken(cell.Lines, edge));
        // A number that ran into the column from the next one may stand between two lines of a name that end and begin with a hyphen.
        var named = new Cell([
            .. cell.Lines.Where(l => !l.Text.Any(char.IsAsciiDigit) || NumberLabels.WithoutNumbers(l.Text).Any(char.IsLetterOrDigit)),
        ]);
        string text = FootnoteMark().Replace(labels.Without(named.LinedText), " ");

        List<string> lines =
        [
            .. text.Split('\n')
                .Select(l => string.Join(' ', l.Split(' ', StringSplitOptions.RemoveEmptyEntries)))
                .Where(l => l.Any(c => char.IsLetterOrDigit(c) || c == '%')),
        ];
        for (int at = 1; at < lines.Count; at++)
        {
            string rest = string.Join(' ', lines[at..]);
            HazardReading read = hazards.Read(rest);
            bool says = read.Classes is { Count: > 0 } || read.M is not null || read.Limits.Count > 0 || read.Toxicity.Count > 0;
            if (says && !read.Doubts.Any(d => d.StartsWith(HazardText.NotUnderstood, StringComparison.Ordinal)))
            {
                return (string.Join(' ', lines[..at]), rest);
            }
        }

        return (string.Join(' ', lines), "");
    }

    private Found<string> Name(Cell? cell, string text, Row row)
    {
        if (cell is null || cell.Text.Length == 0)
        {
            return new Found<string>("", document, row.Page, row.Box, ["the row gives no name"]);
        }

        string name = EmptyBrackets().Replace(text, "").Trim(' ', ',', ';', '/', '*', ':', '|', '-');
        var doubts = new List<string>();
        if (cell.HasSplitWord)
        {
            doubts.Add("the name was split at a hyphen, which may or may not belong to it");
        }

        if (name.Length == 0)
        {
            doubts.Add("the row gives no name");
        }
        else if (name.Contains('\ufffd', StringComparison.Ordinal) || name.Any(char.IsControl))
        {
            doubts.Add("the name holds letters that could not be read");
        }

        if (LabelLeft().IsMatch(name) || name.Split(' ').Any(labels.IsShort))
        {
            doubts.Add("the name seems to hold the label of a number");
        }

        if (text.TrimEnd() is [.., '-'])
        {
            doubts.Add("the name ends in a hyphen: a part of it may be missing");
        }

        if (HalfHyphen().IsMatch(name))
        {
            doubts.Add("a blank stands beside a hyphen in the name, which a line's end may have left there");
        }

        return new Found<string>(name, document, row.Page, BoxOf(cell, row), doubts);
    }

    private Found<string>? Share(Table table, Row row, List<string> doubts)
    {
        Cell? from = table.CellOf(row, ColumnKind.From);
        Cell? to = table.CellOf(row, ColumnKind.To);
        Cell? cell = table.CellOf(row, ColumnKind.Share) ?? to ?? from;
        if (cell is null || (cell.Text.Length == 0 && (from?.Text ?? "").Length == 0))
        {
            doubts.Add("the sheet gives no share");
            return null;
        }

        if (table.CellOf(row, ColumnKind.Share) is not null && (from ?? to) is not null)
        {
            doubts.Add("a column for one end of the shares stands beside a column of shares; only the latter was read");
        }

        if (table.Columns.Count(c => c.Kinds.Contains(ColumnKind.Share)) > 1)
        {
            doubts.Add("several columns are headed as shares; the first one was read");
        }

        string text = table.CellOf(row, ColumnKind.Share) is null ? Between(from?.Text ?? "", to?.Text ?? "") : cell.Text;
        string heading = Phrase.Plain(
            string.Join(' ', table.Columns.Where(c => c.Kinds.Intersect(ColumnKind.OfShares).Any()).Select(c => c.Heading))
        );
        if (OtherUnits().IsMatch(heading) || OtherUnits().IsMatch(text))
        {
            doubts.Add($"the share '{text}' is not in percent by mass ('{heading}'); it was left out");
            return null;
        }

        string figures = Leaders().Replace(labels.Without(text), " ").Trim(' ', '/', ';', ',', ')', ']', '\n');
        bool inPercent = heading.Contains('%', StringComparison.Ordinal);
        Parsed<ShareReading> share = ShareText.Read(figures, wording, ColumnKind.IsPartsPerMillion(heading), inPercent);
        if (!share.Success)
        {
            doubts.Add(share.Reason);
            return null;
        }

        return new Found<string>(share.Value.Text, document, row.Page, BoxOf(cell, row), share.Value.Doubts);
    }

    // A range from two columns; a signless figure in a single one of them is that end.
    private static string Between(string from, string to)
    {
        string low = from.Trim().Trim('-', '\u2013').Trim();
        string high = to.Trim().Trim('-', '\u2013').Trim();
        return low.Length == 0 ? (high.Any(c => c is '<' or '≤') ? high : "<= " + high)
            : high.Length == 0 ? (low.Any(c => c is '>' or '≥') ? low : ">= " + low)
            : low.TrimEnd('%', ' ') + " - " + high;
    }

    private HazardReading Hazards(Table table, Row row, string notes, List<string> rowDoubts, out Cell? where)
    {
        List<int> columns = Enumerable
            .Range(0, table.Columns.Count)
            .Where(i => table.Columns[i].Kinds.Any(k => k is ColumnKind.Classes or ColumnKind.Statements))
            .ToList();
        where = columns.Count == 0 ? null : row.Cells[columns[0]];
        HazardReading own = hazards.Read(string.Join(" ; ", columns.Select(i => row.Cells[i].Text).Where(t => t.Length > 0)));
        MFactors? m = own.M;
        List<ToxicityEstimate> toxicity = [.. own.Toxicity];
        List<string> limits = [.. own.Limits];
        List<string> doubts = [.. own.Doubts];
        for (int i = 0; i < table.Columns.Count; i++)
        {
            if (
                columns.Contains(i)
                || !table.Columns[i].Kinds.Any(k => k is ColumnKind.Limits or ColumnKind.M or ColumnKind.Ate)
                || row.Cells[i].Text.Length == 0
            )
            {
                continue;
            }

            HazardReading more = hazards.Read(row.Cells[i].Text, bareM: table.Columns[i].Kinds is [ColumnKind.M]);
            m ??= more.M;
            toxicity.AddRange(more.Toxicity);
            limits.AddRange(more.Limits);
            doubts.AddRange(more.Doubts);
            if (more.Classes is { Count: > 0 } && more.M is null)
            {
                doubts.Add($"the column '{table.Columns[i].Heading}' says '{row.Cells[i].Text}', which is no limit");
            }
        }

        if (notes.Length > 0)
        {
            HazardReading below = hazards.Read(notes);
            m ??= below.M;
            toxicity.AddRange(below.Toxicity);
            limits.AddRange(below.Limits);
            rowDoubts.AddRange(below.Doubts.Select(d => "below the row: " + d));
            if (
                below.Classes is { Count: > 0 }
                && own.Classes is { Count: > 0 }
                && !below.Classes.Order().SequenceEqual(own.Classes.Order())
            )
            {
                doubts.Add($"under the row stand other classes than in it: '{notes}'");
            }

            own = own with { Classes = own.Classes ?? below.Classes };
        }

        return new HazardReading(own.Classes, limits, m, toxicity, doubts);
    }

    [GeneratedRegex(
        @"(?:\b(?:no|nr|number|nummer|numéro|num)\.?|n°|:)\s*$|\b(?:CAS|EINECS|REACH)\b|(?<!\p{L})n\.?[°º]",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex LabelLeft();

    [GeneratedRegex(@"^[0-9]{1,3}[.)]?\s")]
    private static partial Regex LeadingNumber();

    [GeneratedRegex(@"[(\[]\s*[,;/]*\s*[)\]]")]
    private static partial Regex EmptyBrackets();

    // "[1]", "(2)" or a raised figure, which lead to a note at the table's foot.
    [GeneratedRegex(
        @"(?<=^|\s)(?:\[[0-9]{1,2}\]|\([0-9]\))(?=$|[\s,;])|[\u00b9\u00b2\u00b3\u2020\u2021]+(?=$|[\s,;])",
        RegexOptions.Multiline
    )]
    private static partial Regex FootnoteMark();

    // Dots that lead from a name to its share.
    [GeneratedRegex(@"(?:\.\s?){3,}|\u2026+|_{3,}")]
    private static partial Regex Leaders();

    [GeneratedRegex(@"\bv\s*/\s*v\b|vol\.?\s*-?%|\bvol\b", RegexOptions.IgnoreCase)]
    private static partial Regex OtherUnits();

    // Whether all other cells begin no higher than the name's second line.
    private static bool BeginsAbove(Cell name, Row row) =>
        name.Lines.Count > 1
        && row.Cells.Where(c => c != name && c.Lines.Count > 0).Select(c => c.Lines[0].Frame.Bottom).DefaultIfEmpty(0).Min()
            > name.Lines[1].Frame.Bottom - (name.Lines[1].Frame.Bottom - name.Lines[0].Frame.Bottom) / 4;

    private bool HoldsNote(string name) =>
        Unit().IsMatch(name)
        || NoteLabels.SelectMany(k => wording.Labels[k]).Any(l => l.Length > ShortestNoteLabel && Phrase.IsIn(l, Phrase.Plain(name)));

    [GeneratedRegex(@"\s-[\p{L}0-9]|[0-9]-\s")]
    private static partial Regex HalfHyphen();

    [GeneratedRegex(@"\b(?:mg/kg|mg/l|ppm)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Unit();
}
