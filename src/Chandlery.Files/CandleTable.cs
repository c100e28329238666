using System.Globalization;
using Chandlery.Core.Assessed;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Law;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Files;

/// <summary>
/// Candles and blends as CSV (RFC 4180), out and in. A candle's columns are the fields of its declaration, whatever its kind, so that
/// nothing but remarks is lost on the way.
/// </summary>
public static class CandleTable
{
    private const int LongestName = 100;

    private static readonly string[] BlendHeads =
    [
        "id",
        "oil",
        "amount",
        "measure",
        "shareOfBlendPercent",
        "percentOfCandle",
        "document",
        "revised",
    ];

    /// <summary>A row for each candle, with the columns that one of them has a value for.</summary>
    /// <param name="candles">The candles; their files are read again, since a table has what is written and not what it means.</param>
    /// <param name="commas">True for semicolons between cells and decimal commas, as the spreadsheets of many countries want them.</param>
    /// <param name="problems">Collects the candles that cannot be written; they are left out.</param>
    public static string Candles(IEnumerable<Candle> candles, bool commas, Problems problems)
    {
        var rows = new List<(string Id, YamlMap Fields)>();
        foreach (Candle candle in candles)
        {
            string file = candle.Place.File;
            if (!IsName(candle.Id))
            {
                problems.Add(new TextPlace(file, 0, 0), $"'{candle.Id}' is no name that a table can carry.", NameRemedy);
            }
            else if (TextFile.Read(file, file, problems) is { } text && YamlText.Read(text, file, problems) is { } fields)
            {
                rows.Add((candle.Id, fields));
            }
        }

        return Write(rows, commas);
    }

    /// <summary>A row for each declaration of a candle.</summary>
    internal static string Write(IReadOnlyList<(string Id, YamlMap Fields)> candles, bool commas)
    {
        List<IReadOnlyList<CandleCell>> rows = [.. candles.Select(c => CandleCells.Of(c.Fields))];
        string[] columns =
        [
            .. rows.SelectMany(r => r).DistinctBy(c => c.Column).OrderBy(c => c.Order, StringComparer.Ordinal).Select(c => c.Column),
        ];
        return Csv.Write(
            [CandleColumns.Id, .. columns],
            candles.Zip(
                rows,
                (candle, row) =>
                {
                    Dictionary<string, string> cells = row.ToDictionary(
                        c => c.Column,
                        c => c.IsNumber && commas ? c.Text.Replace('.', ',') : c.Text
                    );
                    return (IReadOnlyList<string>)[candle.Id, .. columns.Select(c => cells.GetValueOrDefault(c, ""))];
                }
            ),
            commas ? ';' : ','
        );
    }

    /// <summary>A row for each oil of each candle, with what it comes to in the finished candle.</summary>
    public static string Blends(IEnumerable<Assessment> assessments) =>
        Csv.Write(
            BlendHeads,
            assessments
                .DistinctBy(a => a.Id)
                .SelectMany(a =>
                    a.Composition.Recipe.Oils.Select(o =>
                        new[]
                        {
                            a.Id,
                            o.Oil.Id,
                            Amount(a.Candle, o) is { } part ? Number(part.Amount) : "",
                            Amount(a.Candle, o) is { } kind ? MeasureName(kind.Measure) : "",
                            Number(o.ShareOfBlend.Value),
                            Number(o.Share.Value),
                            o.Oil.Document,
                            IsoDay.Plain(o.Oil.Revised),
                        }
                    )
                )
        );

    /// <summary>Declarations of candles from CSV; the result is empty when anything is wrong.</summary>
    /// <param name="csv">The text.</param>
    /// <param name="file">Its name, for messages.</param>
    /// <param name="lawbook">What declarations may name.</param>
    /// <param name="problems">Collects what is wrong, with line and column.</param>
    /// <returns>Name of the declaration and its YAML.</returns>
    public static IReadOnlyList<(string Id, string Yaml)> Read(string csv, string file, Lawbook lawbook, Problems problems)
    {
        var own = new Problems();
        CsvSheet sheet = CsvReader.Read(csv, file, own);
        if (sheet.Rows.Count < 2)
        {
            own.Add(
                new TextPlace(file, 1, 1),
                "The file holds no rows.",
                "The first line names the columns, such as id,name,use,vessel,netGrams,wax,load.percent,load.of,oils.1.oil,oils.1.share,wicks.count,wicks.trimToMm,soldIn; a row for each candle follows."
            );
        }
        else
        {
            CheckHeads(sheet.Rows[0], own);
        }

        List<(string Id, string Yaml)> candles = [];
        if (own.None)
        {
            string[] heads = [.. sheet.Rows[0].Select(c => c.Text)];
            bool commas = sheet.Separator != ',' && sheet.Rows.Skip(1).Any(r => Numbers(heads, r).Any(c => c.Text.Contains(',')));
            candles = [.. sheet.Rows.Skip(1).Select(row => ReadRow(heads, row, commas, lawbook, own))];
            CheckNames(sheet.Rows, heads, own);
        }

        problems.AddRange(own.Found);
        return own.None ? candles : [];
    }

    private static void CheckHeads(IReadOnlyList<CsvCell> heads, Problems problems)
    {
        foreach (CsvCell head in heads.Where(h => h.Text != CandleColumns.Id && CandleColumns.Find(h.Text) is null))
        {
            problems.Add(
                head.Place,
                head.Text.Length == 0 ? "A column has no name." : $"'{head.Text}' is no column.",
                Suggestion.Nearest(head.Text, CandleColumns.Known) is { } near
                    ? $"Did you mean '{near}'?"
                    : "Columns are named as the fields of a candle's file: 'chandlery reference' lists them."
            );
        }

        foreach (CsvCell twice in heads.GroupBy(h => h.Text).SelectMany(same => same.Skip(1)))
        {
            problems.Add(twice.Place, $"The column '{twice.Text}' stands there twice.", "Keep one of the two.");
        }

        if (heads.All(h => h.Text != CandleColumns.Id))
        {
            problems.Add(heads[0].Place, "The column 'id' is missing.", "It has the name of each candle's file without .yaml.");
        }
    }

    private static (string Id, string Yaml) ReadRow(
        string[] heads,
        IReadOnlyList<CsvCell> row,
        bool commas,
        Lawbook lawbook,
        Problems problems
    )
    {
        foreach (CsvCell over in row.Skip(heads.Length).Where(c => c.Text.Length > 0).Take(1))
        {
            problems.Add(
                over.Place,
                $"'{over.Text}' stands in no column: the row has {row.Count} cells, the first line {heads.Length}.",
                "A decimal comma between commas needs quotes; write a point, or put semicolons between the cells."
            );
        }

        CheckNumbers(heads, row, commas, problems);
        Dictionary<string, CsvCell> cells = Cells(heads, row);
        CheckLists(cells, problems);
        string id = cells.GetValueOrDefault(CandleColumns.Id)?.Text ?? "";
        CandleRow written = CandleRow.Write(cells, commas);
        var own = new Problems();
        if (new DeclarationReader(lawbook.Vocabulary).Read(written.Yaml, id, id, own) is Candle candle)
        {
            KindCheck.Of(candle, lawbook.Kinds, own);
        }

        problems.AddRange(own.Found.Select(p => InRow(p, written, cells, row[0].Place)));
        return (id, written.Yaml);
    }

    // What is wrong with the declaration is said of the cell that it comes from.
    private static Problem InRow(Problem problem, CandleRow written, Dictionary<string, CsvCell> cells, TextPlace row)
    {
        string column = written.ColumnOf(problem.Place.Line);
        return cells.TryGetValue(column, out CsvCell? cell)
            ? problem with
            {
                Place = cell.Place,
                What = column == CandleColumns.Id ? $"{cell.Text}: {problem.What}" : $"column '{column}': {problem.What}",
            }
            : problem with
            {
                Place = row,
            };
    }

    /// <summary>A row's cells that are not empty, by column.</summary>
    internal static Dictionary<string, CsvCell> Cells(IReadOnlyList<string> heads, IReadOnlyList<CsvCell> row) =>
        heads.Zip(row).Where(c => c.Second.Text.Length > 0).ToDictionary(c => c.First, c => c.Second, StringComparer.Ordinal);

    // A list's own column says that it is empty, or all of it in one word: then no item can be there too.
    private static void CheckLists(Dictionary<string, CsvCell> cells, Problems problems)
    {
        foreach ((string column, CsvCell cell) in cells)
        {
            if (cells.Keys.FirstOrDefault(c => c.StartsWith(column + ".", StringComparison.Ordinal)) is { } item)
            {
                problems.Add(cell.Place, $"'{column}' is filled, and '{item}' too.", "Clear one of the two cells.");
            }
        }
    }

    private static IEnumerable<CsvCell> Numbers(string[] heads, IReadOnlyList<CsvCell> row) =>
        heads.Zip(row).Where(c => CandleColumns.Find(c.First) is NumberField).Select(c => c.Second);

    // Where one number has a decimal comma, a point in another can be a thousands mark: it is asked back and not guessed.
    private static void CheckNumbers(string[] heads, IReadOnlyList<CsvCell> row, bool commas, Problems problems)
    {
        foreach (CsvCell number in Numbers(heads, row).Where(n => commas && n.Text.Contains('.')))
        {
            problems.Add(
                number.Place,
                $"'{number.Text}' has a point, and other numbers of the file have a decimal comma.",
                "Write all decimals alike, and no thousands mark."
            );
        }
    }

    private static void CheckNames(IReadOnlyList<IReadOnlyList<CsvCell>> rows, string[] heads, Problems problems)
    {
        int column = Array.IndexOf(heads, CandleColumns.Id);
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (IReadOnlyList<CsvCell> row in rows.Skip(1))
        {
            CsvCell id = row.ElementAtOrDefault(column) ?? new CsvCell("", row[0].Place);
            if (!IsName(id.Text))
            {
                problems.Add(id.Place, $"'{id.Text}' is no name for a declaration.", NameRemedy);
            }
            else if (!seen.Add(id.Text))
            {
                problems.Add(id.Place, $"'{id.Text}' stands there twice.", "Give each candle a name of its own.");
            }
        }
    }

    private const string NameRemedy = "Write letters, figures and hyphens, such as fig-tin.";

    // A name becomes a file's name: nothing that leads elsewhere, and nothing hidden.
    private static bool IsName(string id) =>
        id.Length is > 0 and <= LongestName
        && char.IsLetterOrDigit(id[0])
        && id.All(c => char.IsLetterOrDigit(c) || c is '-' or '_' or '.' or ' ')
        && id[^1] is not ('.' or ' ');

    private static OilPart? Amount(Candle candle, OilShare share) => candle.Oils.FirstOrDefault(o => o.Oil.Id == share.Oil.Id);

    private static string MeasureName(OilMeasure measure) => measure.ToString().ToLowerInvariant();

    private static string Number(double value) => Math.Round(value, 6).ToString(CultureInfo.InvariantCulture);
}
