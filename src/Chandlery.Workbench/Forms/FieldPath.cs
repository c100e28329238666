using Chandlery.Yaml;

namespace Chandlery.Workbench.Forms;

/// <summary>Finds the field that a place in a declaration's text belongs to.</summary>
internal static class FieldPath
{
    /// <summary>Names and positions that lead to what stands at a place, joined by dots; null when nothing of the form stands there.</summary>
    /// <param name="map">The text as it was read; null where it cannot be read.</param>
    /// <param name="line">Line, from 1.</param>
    /// <param name="column">Column, from 1; 0 for the first field that stands on the line.</param>
    public static string? At(YamlMap? map, int line, int column) =>
        map?.Entries.Select(e => Within(e.Value, e.Key, line, column)).FirstOrDefault(path => path is not null);

    private static string? Within(YamlValue value, string path, int line, int column)
    {
        if (value.Place.Line == line && (value.Place.Column == column || (column == 0 && value is YamlScalar)))
        {
            return path;
        }

        IEnumerable<(YamlValue Value, string Path)> inside = value switch
        {
            YamlMap map => map.Entries.Select(e => (e.Value, $"{path}.{e.Key}")),
            YamlList list => list.Items.Select((item, i) => (item, $"{path}.{i}")),
            _ => [],
        };
        return inside.Select(i => Within(i.Value, i.Path, line, column)).FirstOrDefault(found => found is not null)
            ?? (column == 0 && value is not YamlScalar && value.Place.Line == line ? path : null);
    }
}
