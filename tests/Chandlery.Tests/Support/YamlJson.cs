using System.Globalization;
using System.Text.Json.Nodes;
using Chandlery.Yaml;

namespace Chandlery.Tests.Support;

/// <summary>YAML as an editor hands it to a JSON Schema: plain scalars become numbers and flags where they look like them.</summary>
internal static class YamlJson
{
    public static string Convert(string yaml)
    {
        var problems = new Problems();
        YamlMap? map = YamlText.Read(yaml, "test.yaml", problems);
        Assert.Empty(problems.Found);
        return Node(map!)!.ToJsonString();
    }

    private static JsonNode? Node(YamlValue value) =>
        value switch
        {
            YamlMap map => new JsonObject(map.Entries.Select(e => KeyValuePair.Create(e.Key, Node(e.Value)))),
            YamlList list => new JsonArray([.. list.Items.Select(Node)]),
            YamlScalar { Quoted: false, Text: "true" or "false" } flag => JsonValue.Create(flag.Text == "true"),
            YamlScalar { Quoted: false } scalar
                when double.TryParse(scalar.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) => JsonValue.Create(
                number
            ),
            YamlScalar scalar => JsonValue.Create(scalar.Text),
            _ => throw new InvalidOperationException(),
        };
}
