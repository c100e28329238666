using System.Globalization;
using Chandlery.Core.Declared.Reading;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Files;

/// <summary>The columns that a table of candles may have.</summary>
internal static class CandleColumns
{
    /// <summary>The column with the name of the declaration.</summary>
    public const string Id = "id";

    private const int MostItems = 200;

    /// <summary>The field that a column is for; null when there is no such column.</summary>
    public static Field? Find(string column) => Find(column.Split('.'), CandleShape.Candle);

    /// <summary>Columns of whatever a candle may have, of lists those of the first item.</summary>
    public static IReadOnlyList<string> Known { get; } = [Id, .. Of(CandleShape.Candle, "")];

    private static IEnumerable<string> Of(Shape shape, string before) => shape.Fields.SelectMany(f => Of(f, before + f.Key));

    private static IEnumerable<string> Of(Field field, string name) =>
        field switch
        {
            GroupField group => Of(group.Shape, name + "."),
            GroupsField groups => Of(groups.Item, name + ".1."),
            EitherField => [name, name + ".1"],
            TextsField when !CandleCells.IsOneCell(field) => [name + ".1"],
            _ => [name],
        };

    private static Field? Find(ReadOnlySpan<string> path, Shape shape)
    {
        string key = path[0];
        Field? field = shape.Fields.FirstOrDefault(f => f.Key == key);
        ReadOnlySpan<string> rest = path[1..];
        return rest.Length == 0
            ? field
            : field switch
            {
                GroupField group => Find(rest, group.Shape),
                GroupsField groups when IsNumber(rest[0]) && rest.Length > 1 => Find(rest[1..], groups.Item),
                EitherField or TextsField when rest.Length == 1 && IsNumber(rest[0]) && !CandleCells.IsOneCell(field) => field,
                _ => null,
            };
    }

    private static bool IsNumber(string text) =>
        text.Length is > 0 and <= 3
        && text.All(char.IsAsciiDigit)
        && text[0] != '0'
        && int.Parse(text, CultureInfo.InvariantCulture) <= MostItems;
}
