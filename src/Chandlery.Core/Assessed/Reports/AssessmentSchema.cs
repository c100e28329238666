using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using Chandlery.Core.Declared.Reading;

namespace Chandlery.Core.Assessed.Reports;

/// <summary>The JSON Schema of an assessment, made from the records that are written.</summary>
internal static class AssessmentSchema
{
    private const string Reports = "#/$defs/assessments";

    private static readonly AssessmentJsonContext Context = new(
        new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            RespectNullableAnnotations = true,
            RespectRequiredConstructorParameters = true,
        }
    );

    /// <summary>The schema: one assessment, or an array of them.</summary>
    public static JsonObject Write()
    {
        JsonNode reports = Context.AssessmentReportArray.GetJsonSchemaAsNode(
            new JsonSchemaExporterOptions { TreatNullObliviousAsNonNullable = true, TransformSchemaNode = Tighten }
        );
        Move(reports, Reports);
        return new JsonObject
        {
            ["$schema"] = SchemaWriter.Dialect,
            ["title"] = "What 'chandlery assess --json' prints: one candle under one edition of the law, or an array of them",
            ["oneOf"] = new JsonArray(new JsonObject { ["$ref"] = Reports + "/items" }, new JsonObject { ["$ref"] = Reports }),
            ["$defs"] = new JsonObject { ["assessments"] = reports },
        };
    }

    // What the types do not tell.
    private static JsonNode Tighten(JsonSchemaExporterContext context, JsonNode schema)
    {
        if (schema is not JsonObject map)
        {
            return schema;
        }

        if (map.ContainsKey("properties"))
        {
            map["additionalProperties"] = false;
        }

        switch (context.Path)
        {
            case [.., "asOf" or "on"]:
                map["pattern"] = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$";
                map["description"] = "A day, year-month-day.";
                break;
            case [.., "signalWord"]:
                map["enum"] = new JsonArray("Danger", "Warning", null);
                break;
            case [.., "pictograms", "items"]:
                map["pattern"] = "^GHS0[1-9]$";
                break;
            case [.., "holds"]:
                map["description"] = "null: could not be checked";
                break;
        }

        return map;
    }

    /// <summary>Leads references to where a schema stands now: the exporter refers to what it has written before from the top of its own.</summary>
    public static void Move(JsonNode? node, string to)
    {
        switch (node)
        {
            case JsonObject map:
                if (map["$ref"] is JsonValue reference)
                {
                    map["$ref"] = to + reference.GetValue<string>()[1..];
                }

                foreach (KeyValuePair<string, JsonNode?> entry in map)
                {
                    Move(entry.Value, to);
                }

                break;
            case JsonArray list:
                foreach (JsonNode? item in list)
                {
                    Move(item, to);
                }

                break;
        }
    }
}
