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

    /// <summary>The cells of a declaration.</summary>
    public static IReadOnlyList<CandleCell> Of(YamlMap map) => [.. OfMap(map, CandleShape.Candle, "", "")];

    /// <summary>True when items of the list are codes, which stand in one cell with blanks between.</summary>
    public static bool IsOneCell(Field field) => field is TextsField { Pattern: not null };

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
            (_, YamlList list) when IsOneCell(field) => [new CandleCell(name, order, string.Join(' ', list.Items.Select(Text)), false)],
            (_, YamlList list) => list.Items.Select(
                (item, i) => new CandleCell($"{name}.{i + 1}", $"{order}{i + 1:D3}.", Text(item), false)
            ),
            _ => [new CandleCell(name, order, Text(value), field is NumberField)],
        };

    private static string Text(YamlValue value) => value is YamlScalar scalar ? scalar.Text.Trim() : throw new UnreachableException();
}
