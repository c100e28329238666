using System.Diagnostics;
using Chandlery.Core.Declared.Reading;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Files;

/// <summary>
/// Takes a candle's declaration apart into cells. A column is named as the field is; in a group by both names with a point between
/// (<c>load.percent</c>), in a list with the item's number too (<c>oils.1.share</c>).
/// </summary>
internal static class CandleCells
{
    /// <summary>Stands for a list or group that is there and holds nothing, which is not the same as none.</summary>
    public const string Empty = "empty";

    private const char BehindNames = ';';

    /// <summary>The cells of a declaration.</summary>
    public static IReadOnlyList<CandleCell> Of(YamlMap map) => [.. OfMap(map, CandleShape.Candle, "", "")];

    /// <summary>True when items of the list are codes or short names, which stand in one cell.</summary>
    public static bool IsOneCell(Field field) => field is TextsField { Pattern: not null };

    /// <summary>The items in one cell: blanks between codes; behind each a semicolon where a name has a blank in it.</summary>
    public static string InOneCell(IReadOnlyList<string> items) =>
        items.Any(i => i.Contains(' ', StringComparison.Ordinal)) ? string.Join("; ", items) + BehindNames : string.Join(' ', items);

    /// <summary>The items of such a cell.</summary>
    public static string[] OfOneCell(string cell) =>
        cell.Split(
            cell.Contains(BehindNames, StringComparison.Ordinal) ? BehindNames : ' ',
            StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries
        );

    private static IEnumerable<CandleCell> OfMap(YamlMap map, Shape shape, string before, string order) =>
        shape.Fields.SelectMany(
            (field, i) =>
                map.Entries.Where(e => e.Key == field.Key).SelectMany(e => OfValue(e.Value, field, before + field.Key, $"{order}{i:D3}."))
        );

    private static IEnumerable<CandleCell> OfValue(YamlValue value, Field field, string name, string order) =>
        (field, value) switch
        {
            (_, YamlMap { Entries.Count: 0 } or YamlList { Items.Count: 0 }) => [new CandleCell(name, order, Empty, false)],
            (GroupField group, YamlMap map) => OfMap(map, group.Shape, name + ".", order),
            (GroupsField groups, YamlList list) => list.Items.SelectMany(
                (item, i) => OfMap((YamlMap)item, groups.Item, $"{name}.{i + 1}.", $"{order}{i + 1:D3}.")
            ),
            (_, YamlList list) when IsOneCell(field) => [new CandleCell(name, order, InOneCell([.. list.Items.Select(Text)]), false)],
            (_, YamlList list) => list.Items.Select(
                (item, i) => new CandleCell($"{name}.{i + 1}", $"{order}{i + 1:D3}.", Text(item), false)
            ),
            _ => [new CandleCell(name, order, Text(value), field is NumberField)],
        };

    private static string Text(YamlValue value) => value is YamlScalar scalar ? scalar.Text.Trim() : throw new UnreachableException();
}
