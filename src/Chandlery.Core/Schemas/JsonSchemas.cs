using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Core.Declared.Reading;

namespace Chandlery.Core.Schemas;

/// <summary>The JSON Schemas of all that people and programs write for this program or read from it.</summary>
public static class JsonSchemas
{
    private static readonly JsonWriterOptions Layout = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The schemas of declarations by file name.</summary>
    public static IReadOnlyDictionary<string, string> Declarations() =>
        DeclarationShapes.All.ToDictionary(kind => File(kind.Name), kind => Text(SchemaWriter.Write(kind)));

    /// <summary>All schemas by file name.</summary>
    public static IReadOnlyDictionary<string, string> All() =>
        new SortedDictionary<string, string>(Declarations().ToDictionary(), StringComparer.Ordinal)
        {
            [File("assessment")] = Text(AssessmentSchema.Write()),
        };

    private static string File(string name) => name + ".schema.json";

    internal static string Text(JsonNode schema)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, Layout))
        {
            schema.WriteTo(writer);
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }
}
