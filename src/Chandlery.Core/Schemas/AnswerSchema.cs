using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization.Metadata;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Core.Declared.Reading;

namespace Chandlery.Core.Schemas;

/// <summary>Writes the JSON Schema of what a command says to programs, from the records that are written.</summary>
public static class AnswerSchema
{
    private const string Many = "#/$defs/answers";

    /// <summary>Options under which a context tells what may be null and what is always there.</summary>
    public static JsonSerializerOptions Strict() =>
        new()
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            RespectNullableAnnotations = true,
            RespectRequiredConstructorParameters = true,
        };

    /// <summary>The schema of an answer.</summary>
    public static JsonObject Of(JsonTypeInfo type) =>
        (JsonObject)
            type.GetJsonSchemaAsNode(
                new JsonSchemaExporterOptions { TreatNullObliviousAsNonNullable = true, TransformSchemaNode = (_, node) => Close(node) }
            );

    /// <summary>The schema of an answer that is an array, or its one item alone.</summary>
    public static JsonObject OneOrMany(JsonTypeInfo array)
    {
        JsonObject many = Of(array);
        AssessmentSchema.Move(many, Many);
        return new JsonObject
        {
            ["oneOf"] = new JsonArray(new JsonObject { ["$ref"] = Many + "/items" }, new JsonObject { ["$ref"] = Many }),
            ["$defs"] = new JsonObject { ["answers"] = many },
        };
    }

    /// <summary>The schema as a file with a title.</summary>
    public static string Text(string title, JsonObject schema)
    {
        var file = new JsonObject { ["$schema"] = SchemaWriter.Dialect, ["title"] = title };
        foreach ((string key, JsonNode? value) in schema)
        {
            file[key] = value?.DeepClone();
        }

        return JsonSchemas.Text(file);
    }

    private static JsonNode Close(JsonNode node)
    {
        if (node is JsonObject map && map.ContainsKey("properties"))
        {
            map["additionalProperties"] = false;
        }

        return node;
    }
}
