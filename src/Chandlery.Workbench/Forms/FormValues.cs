using System.Text.Json.Nodes;
using Chandlery.Yaml;

namespace Chandlery.Workbench.Forms;

/// <summary>What a declaration's text holds, as the page's fields show it: every value as it was typed.</summary>
internal static class FormValues
{
    /// <summary>The fields; null when the text cannot be read.</summary>
    public static JsonObject? Of(string yaml) => Tree(YamlText.Read(yaml, "", new Problems()));

    /// <summary>The fields of a text as it was read; null for none.</summary>
    public static JsonObject? Tree(YamlMap? map) => map is null ? null : Of(map);

    private static JsonNode? Of(YamlValue value) =>
        value switch
        {
            YamlMap map => Of(map),
            YamlList list => new JsonArray([.. list.Items.Select(Of)]),
            YamlScalar scalar => JsonValue.Create(scalar.Text),
            _ => null,
        };

    private static JsonObject Of(YamlMap map)
    {
        var fields = new JsonObject();
        foreach (YamlEntry entry in map.Entries)
        {
            fields[entry.Key] = Of(entry.Value);
        }

        return fields;
    }
}
