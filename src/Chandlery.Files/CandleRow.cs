using System.Globalization;
using System.Text;
using Chandlery.Core.Declared.Reading;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Files;

/// <summary>Writes a row of a table as a candle's declaration, a value a line, and knows which cell each line comes from.</summary>
internal sealed class CandleRow
{
    private readonly IReadOnlyDictionary<string, CsvCell> cells;
    private readonly bool commas;
    private readonly StringBuilder yaml = new();
    private readonly List<string> columns = [];

    private CandleRow(IReadOnlyDictionary<string, CsvCell> cells, bool commas)
    {
        this.cells = cells;
        this.commas = commas;
    }

    /// <summary>The declaration.</summary>
    public string Yaml => yaml.ToString();

    /// <summary>The declaration that a row makes.</summary>
    /// <param name="cells">Its cells that are not empty, by column.</param>
    /// <param name="commas">True when its numbers have a decimal comma.</param>
    public static CandleRow Write(IReadOnlyDictionary<string, CsvCell> cells, bool commas)
    {
        var row = new CandleRow(cells, commas);
        row.Line("declares: candle", "id");
        row.WriteShape(CandleShape.Candle, "", "", "");
        return row;
    }

    /// <summary>The column that a line of the declaration comes from.</summary>
    public string ColumnOf(int line) => columns[Math.Clamp(line - 1, 0, columns.Count - 1)];

    // The first line of a list's item begins with its hyphen, the others are set in below it.
    private void WriteShape(Shape shape, string before, string inset, string first)
    {
        int start = columns.Count;
        foreach (Field field in shape.Fields)
        {
            string lead = columns.Count == start && first.Length > 0 ? first : inset;
            WriteField(field, before + field.Key, lead, inset);
        }
    }

    private void WriteField(Field field, string name, string lead, string inset)
    {
        string? own = cells.GetValueOrDefault(name)?.Text;
        if (own == CandleCells.Empty && field is GroupField)
        {
            Line($"{lead}{field.Key}: {{}}", name);
        }
        else if (own == CandleCells.Empty && field is GroupsField or TextsField or EitherField)
        {
            Line($"{lead}{field.Key}: []", name);
        }
        else if (own is not null)
        {
            Line($"{lead}{field.Key}: {Value(field, own)}", name);
        }
        else if (Under(name).Any())
        {
            WriteParts(field, name, lead, inset + "  ");
        }
    }

    private void WriteParts(Field field, string name, string lead, string inset)
    {
        Line($"{lead}{field.Key}:", Under(name).First());
        if (field is GroupField group)
        {
            WriteShape(group.Shape, name + ".", inset, "");
            return;
        }

        foreach (string item in Under(name).Select(c => c[(name.Length + 1)..].Split('.')[0]).Distinct().OrderBy(Number))
        {
            if (field is GroupsField groups)
            {
                WriteShape(groups.Item, $"{name}.{item}.", inset + "  ", inset + "- ");
            }
            else
            {
                Line($"{inset}- {YamlEdit.Scalar(cells[$"{name}.{item}"].Text)}", $"{name}.{item}");
            }
        }
    }

    private string Value(Field field, string text) =>
        field switch
        {
            TextsField when CandleCells.IsOneCell(field) => $"[{string.Join(", ", CandleCells.OfOneCell(text).Select(YamlEdit.Scalar))}]",
            NumberField when commas => YamlEdit.Scalar(text.Replace(',', '.')),
            // A spreadsheet writes its own truth in capitals.
            FlagField when text.ToLowerInvariant() is "yes" or "no" or "true" or "false" => text.ToLowerInvariant(),
            _ => YamlEdit.Scalar(text),
        };

    private IEnumerable<string> Under(string name) => cells.Keys.Where(c => c.StartsWith(name + ".", StringComparison.Ordinal));

    private static int Number(string item) => int.Parse(item, CultureInfo.InvariantCulture);

    private void Line(string text, string column)
    {
        yaml.Append(text).Append('\n');
        columns.Add(column);
    }
}
