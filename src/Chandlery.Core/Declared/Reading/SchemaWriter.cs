using System.Text.Json.Nodes;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Writes the JSON Schema of a declaration (JSON Schema 2020-12) from the fields by which it is read.</summary>
internal sealed class SchemaWriter
{
    /// <summary>The edition of JSON Schema that all schemas are written in.</summary>
    public const string Dialect = "https://json-schema.org/draft/2020-12/schema";

    // What 'yes' and 'no' may be once YAML was turned into JSON.
    private static readonly JsonNode[] Yes = [true, "yes"];
    private static readonly JsonNode[] No = [false, "no"];

    private readonly SortedDictionary<string, JsonObject> shared = new(StringComparer.Ordinal);

    private SchemaWriter() { }

    /// <summary>The schema of a kind of declaration.</summary>
    public static JsonObject Write(Shape kind)
    {
        var writer = new SchemaWriter();
        JsonObject map = writer.Map(kind, new JsonObject { ["const"] = kind.Name });
        var schema = new JsonObject { ["$schema"] = Dialect, ["title"] = kind.About };
        foreach ((string key, JsonNode? value) in map)
        {
            schema[key] = value?.DeepClone();
        }

        if (writer.shared.Count > 0)
        {
            schema["$defs"] = new JsonObject(writer.shared.Select(s => KeyValuePair.Create(s.Key, (JsonNode?)s.Value)));
        }

        return schema;
    }

    private JsonObject Map(Shape shape, JsonObject? declares)
    {
        var properties = new JsonObject();
        if (declares is not null)
        {
            properties["declares"] = declares;
        }

        foreach (Field field in shape.Fields)
        {
            properties[field.Key] = Of(field);
        }

        string[] needed = [.. declares is null ? [] : new[] { "declares" }, .. shape.Fields.Where(f => f.Needed).Select(f => f.Key)];
        var map = new JsonObject
        {
            ["type"] = "object",
            ["properties"] = properties,
            ["required"] = Texts(needed),
            ["additionalProperties"] = false,
        };
        if (shape.Variants.Count > 0)
        {
            map["oneOf"] = new JsonArray([.. shape.Variants.Select(v => (JsonNode)Way(v, shape))]);
        }

        if (shape.OneNeeded.Count > 0)
        {
            List<JsonNode> ways = [.. shape.OneNeeded.Select(key => new JsonObject { ["required"] = Texts([key]) })];
            if (shape.UnlessEmpty is { } list)
            {
                ways.Add(new JsonObject { ["properties"] = new JsonObject { [list] = new JsonObject { ["maxItems"] = 0 } } });
            }

            map["anyOf"] = new JsonArray([.. ways]);
        }

        if (shape.NotTogether.Count > 0)
        {
            map["not"] = new JsonObject { ["required"] = Texts(shape.NotTogether) };
        }

        return map;
    }

    private static JsonObject Way(Variant variant, Shape shape)
    {
        var properties = new JsonObject();
        List<string> needed = [.. variant.Needed];
        if (variant.ChosenBy is { } chooser)
        {
            bool flag = shape.Fields.Any(f => f.Key == chooser && f is FlagField);
            properties[chooser] = new JsonObject
            {
                ["enum"] = flag
                    ? new JsonArray([.. (variant.Values[0] == "yes" ? Yes : No).Select(v => v.DeepClone())])
                    : Texts(variant.Values),
            };
            needed.AddRange(variant.IsDefault ? [] : [chooser]);
        }

        foreach (string key in variant.Without)
        {
            properties[key] = false;
        }

        return new JsonObject { ["required"] = Texts(needed), ["properties"] = properties };
    }

    private JsonObject Of(Field field)
    {
        JsonObject schema = field switch
        {
            TextField text => Text(text),
            NumberField number => Number(number),
            DayField => new JsonObject { ["type"] = "string", ["pattern"] = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" },
            FlagField => new JsonObject { ["enum"] = new JsonArray(true, false, "yes", "no") },
            ChoiceField choice => Choice(choice),
            GroupField group => Refer(group.Shape),
            GroupsField groups => List(Refer(groups.Item), groups.NotEmpty),
            TextsField texts => List(Pattern(texts.Pattern), texts.NotEmpty),
            EitherField either => new JsonObject { ["oneOf"] = new JsonArray([.. either.Ways.Select(w => (JsonNode)Of(w))]) },
            MapField map => new JsonObject { ["type"] = "object", ["additionalProperties"] = Of(map.Value) },
            _ => throw new InvalidOperationException($"no schema for {field.GetType().Name}"),
        };
        if (field.About.Length > 0)
        {
            schema["description"] = field.About;
        }

        return schema;
    }

    private static JsonObject Text(TextField field)
    {
        JsonObject text = Pattern(field.Pattern);
        if (field.AsNumber is { } number)
        {
            // Bounds of numbers say nothing of a text.
            foreach ((string key, JsonNode? value) in Number(number))
            {
                text[key] = value?.DeepClone();
            }

            text["type"] = Texts(["string", "number"]);
        }

        return text;
    }

    private static JsonObject Pattern(string? pattern)
    {
        var text = new JsonObject { ["type"] = "string" };
        text[pattern is null ? "minLength" : "pattern"] = pattern is null ? 1 : pattern;
        return text;
    }

    private static JsonObject Number(NumberField field) =>
        new()
        {
            ["type"] = field.Whole ? "integer" : "number",
            [field.LowAllowed ? "minimum" : "exclusiveMinimum"] = field.Low,
            ["maximum"] = field.High,
        };

    // In a YAML reader's hands a bare 'no' may have become false.
    private static JsonObject Choice(ChoiceField field) =>
        new() { ["enum"] = field.Choices is ["no"] ? new JsonArray([.. No.Select(v => v.DeepClone())]) : Texts(field.Choices) };

    private static JsonObject List(JsonObject items, bool notEmpty)
    {
        var list = new JsonObject { ["type"] = "array", ["items"] = items };
        if (notEmpty)
        {
            list["minItems"] = 1;
        }

        return list;
    }

    private JsonObject Refer(Shape shape)
    {
        if (!shared.ContainsKey(shape.Name))
        {
            // Its place is taken first: what stands in it may refer to others.
            shared[shape.Name] = [];
            JsonObject map = Map(shape, null);
            map["description"] = shape.About;
            shared[shape.Name] = map;
        }

        return new JsonObject { ["$ref"] = "#/$defs/" + shape.Name };
    }

    private static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(t => (JsonNode)t)]);
}
