using System.Text.RegularExpressions;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Tables;
using Chandlery.Intake.Wording;
using Chandlery.Yaml;

namespace Chandlery.Intake.Drafts;

/// <summary>Turns the rows of a table into ingredients.</summary>
internal sealed partial class IngredientRows(SheetWording wording, HazardText hazards, int document)
{
    private static readonly string[] IdentifyingKinds = [ColumnKind.Cas, ColumnKind.Ec, ColumnKind.Name];
    private static readonly string[] IdentifierLabels = ["casNumber", "ecNumber", "ignored"];

    /// <summary>One ingredient for each row.</summary>
    public IEnumerable<DraftIngredient> Of(Table table) => table.Rows.Select(row => Of(table, row)).OfType<DraftIngredient>();

    /// <summary>An ingredient from texts that stand beside labels instead of in a table.</summary>
    /// <param name="parts">Lines by kind of column.</param>
    public DraftIngredient? Of(IReadOnlyDictionary<string, Cell> parts)
    {
        var columns = parts.Keys.Select(k => new Column([k], "")).ToList();
        int page = parts.Values.SelectMany(c => c.Lines).First().Page;
        var row = new Row(page, [.. parts.Values], []);
        return Of(new Table(columns, [row]), row);
    }

    private DraftIngredient? Of(Table table, Row row)
    {
        if (row.Cells.All(c => c.Lines.Count == 0))
        {
            return null;
        }

        Cell? nameCell = table.CellOf(row, ColumnKind.Name) ?? table.CellOf(row, ColumnKind.Cas);
        List<Cell> identifying = [.. IdentifyingKinds.Select(k => table.CellOf(row, k)).OfType<Cell>().Distinct()];
        var doubts = new List<string>(row.Doubts);
        Found<string>? cas = Number(table.CellOf(row, ColumnKind.Cas), identifying, row, ColumnKind.CasPattern(), CasNumber.Parse, "CAS");
        Found<string>? ec = Number(table.CellOf(row, ColumnKind.Ec), identifying, row, EcPattern(), EcNumber.Parse, "EC");
        Found<string> name = Name(nameCell, row);
        if (cas is null && ec is null)
        {
            doubts.Add("the row gives no CAS or EC number");
        }

        for (int i = 0; i < table.Columns.Count; i++)
        {
            if (table.Columns[i].Kinds.Count == 0 && row.Cells[i].Text.Length > 1 && row.Cells[i].Text.Any(char.IsLetterOrDigit))
            {
                doubts.Add($"the column '{table.Columns[i].Heading}' is not understood; it says '{row.Cells[i].Text}'");
            }
        }

        HazardReading read = Hazards(table, row, out Cell? where);
        Found<T> At<T>(T value, Cell? cell, IReadOnlyList<string> own) => new(value, document, row.Page, BoxOf(cell, row), own);
        return new DraftIngredient(
            name,
            cas,
            ec,
            Share(table, row, doubts),
            read.Classes is null ? null : At(read.Classes, where, read.Doubts),
            read.Limits.Count == 0 ? null : At(read.Limits, table.CellOf(row, ColumnKind.Limits) ?? where, []),
            read.M is null ? null : At(read.M, table.CellOf(row, ColumnKind.M) ?? table.CellOf(row, ColumnKind.Limits) ?? where, []),
            read.Toxicity.Count == 0
                ? null
                : At(read.Toxicity, table.CellOf(row, ColumnKind.Ate) ?? table.CellOf(row, ColumnKind.Limits) ?? where, []),
            read.Classes is null ? [.. doubts, "the sheet says nothing about its classes", .. read.Doubts] : doubts
        );
    }

    private static Box BoxOf(Cell? cell, Row row) =>
        cell?.Lines.Where(l => l.Page == row.Page).ToList() is { Count: > 0 } lines ? Box.Around(lines.Select(l => l.Box)) : row.Box;

    private Found<string>? Number<T>(
        Cell? own,
        IReadOnlyList<Cell> identifying,
        Row row,
        Regex pattern,
        Func<string, Parsed<T>> parse,
        string what
    )
        where T : class
    {
        foreach (Cell cell in own is null ? identifying : [own, .. identifying.Where(c => c != own)])
        {
            List<string> numbers = [.. pattern.Matches(OtherNumbers().Replace(cell.Text, " ")).Select(m => m.Value).Distinct()];
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

        return own is not null && own.Text.Any(char.IsAsciiDigit)
            ? new Found<string>(own.Text, document, row.Page, BoxOf(own, row), [$"'{own.Text}' is no {what} number"])
            : null;
    }

    private Found<string> Name(Cell? cell, Row row)
    {
        if (cell is null || cell.Text.Length == 0)
        {
            return new Found<string>("", document, row.Page, row.Box, ["the row gives no name"]);
        }

        string text = EcPattern().Replace(ColumnKind.CasPattern().Replace(OtherNumbers().Replace(cell.Text, " "), " "), " ");
        foreach (string label in IdentifierLabels.SelectMany(k => wording.Labels[k]).OrderByDescending(l => l.Length))
        {
            string pattern = $@"(?<![\p{{L}}0-9]){Regex.Escape(label).Replace(@"\ ", @"\.?\s*", StringComparison.Ordinal)}\.?\s*[:#]+";
            text = Regex.Replace(text, pattern, " ", RegexOptions.IgnoreCase);
            text = Regex.Replace(
                text,
                $@"(?<![\p{{L}}0-9]){Regex.Escape(label)}\.?(?=\s*(?:$|[,;/)]|\s{{2}}))",
                " ",
                RegexOptions.IgnoreCase
            );
        }

        string name = EmptyBrackets()
            .Replace(string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries)), "")
            .Trim(' ', ',', ';', '/', '*', ':', '|', '-');
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

        if (LabelLeft().IsMatch(name))
        {
            doubts.Add("the name seems to hold the label of a number");
        }

        return new Found<string>(name, document, row.Page, BoxOf(cell, row), doubts);
    }

    private Found<string>? Share(Table table, Row row, List<string> doubts)
    {
        Cell? cell = table.CellOf(row, ColumnKind.Share);
        if (cell is null || cell.Text.Length == 0)
        {
            doubts.Add("the sheet gives no share");
            return null;
        }

        string heading = Phrase.Plain(table.Columns.FirstOrDefault(c => c.Kinds.Contains(ColumnKind.Share))?.Heading ?? "");
        if (OtherUnits().IsMatch(heading) || OtherUnits().IsMatch(cell.Text))
        {
            doubts.Add($"the share '{cell.Text}' is not in percent by mass ('{heading}'); it was left out");
            return null;
        }

        Parsed<string> share = ShareText.Parse(cell.Text, wording);
        if (!share.Success)
        {
            doubts.Add(share.Reason);
            return null;
        }

        return new Found<string>(share.Value, document, row.Page, BoxOf(cell, row), []);
    }

    private HazardReading Hazards(Table table, Row row, out Cell? where)
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

        return new HazardReading(own.Classes, limits, m, toxicity, doubts);
    }

    [GeneratedRegex(@"(?<![0-9-])[0-9]{3}-[0-9]{3}-[0-9](?![0-9-])")]
    private static partial Regex EcPattern();

    // REACH registration and index numbers, which hold what looks like EC numbers.
    [GeneratedRegex(@"(?<![0-9])0[0-9]-[0-9]{10}-[0-9]{2}(?:-[0-9xX]{4})?|(?<![0-9-])[0-9]{3}-[0-9]{3}-[0-9]{2}-[0-9X](?![0-9-])")]
    private static partial Regex OtherNumbers();

    [GeneratedRegex(@"(?:\b(?:no|nr|number|nummer|numéro|num)\.?|n°|:)\s*$|\b(?:CAS|EINECS|REACH)\b", RegexOptions.IgnoreCase)]
    private static partial Regex LabelLeft();

    [GeneratedRegex(@"[(\[]\s*[,;/]*\s*[)\]]")]
    private static partial Regex EmptyBrackets();

    [GeneratedRegex(@"\bppm\b|mg\s*/\s*kg|\bv\s*/\s*v\b|vol\.?\s*-?%|\bvol\b", RegexOptions.IgnoreCase)]
    private static partial Regex OtherUnits();
}
