using System.Text.Json;
using Json.Schema;

namespace Chandlery.Tests.Support;

/// <summary>The JSON Schemas as they lie in data/schemas, evaluated by a library that had no part in writing them.</summary>
internal static class Schema
{
    private static readonly Dictionary<string, JsonSchema> Schemas = [];

    public static string Folder => Path.Combine(TestLaw.Repository, "data", "schemas");

    /// <summary>True when the document fulfils the schema.</summary>
    public static bool Accepts(string name, JsonElement document) => Of(name).Evaluate(document).IsValid;

    /// <summary>Fails with what the schema says.</summary>
    public static void Fulfils(string name, JsonElement document)
    {
        EvaluationResults results = Of(name).Evaluate(document, new EvaluationOptions { OutputFormat = OutputFormat.List });
        string errors = string.Join(
            "; ",
            (results.Details ?? [])
                .Where(d => d.Errors is not null)
                .Select(d => $"{d.InstanceLocation}: {string.Join(", ", d.Errors!.Values)}")
        );
        Assert.True(results.IsValid, name + ": " + errors);
    }

    private static JsonSchema Of(string name)
    {
        lock (Schemas)
        {
            if (!Schemas.TryGetValue(name, out JsonSchema? schema))
            {
                Schemas[name] = schema = JsonSchema.FromFile(Path.Combine(Folder, name + ".schema.json"));
            }

            return schema;
        }
    }
}
