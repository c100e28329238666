using System.Text.Json;
using Chandlery.Yaml;

namespace Chandlery.Workbench.Forms;

/// <summary>Puts the page's changes into a declaration's text; what was not changed stays as it was written.</summary>
internal static class FieldEdits
{
    private const int MostEdits = 400;
    private const int DeepestPath = 12;
    private const int DeepestValue = 8;

    /// <summary>The text with the changes.</summary>
    /// <exception cref="FormatException">A change is none, or the text has no place for it.</exception>
    public static string Apply(string yaml, IReadOnlyList<FieldEdit>? edits)
    {
        if (edits is { Count: > MostEdits })
        {
            throw new FormatException($"More than {MostEdits} changes at once are not taken.");
        }

        return (edits ?? []).Aggregate(yaml, Apply);
    }

    private static string Apply(string yaml, FieldEdit edit)
    {
        if (edit?.Path is not { Count: > 0 and <= DeepestPath })
        {
            throw new FormatException("A change does not say what it changes.");
        }

        object[] path = [.. edit.Path.Select(Step)];
        return edit.Value is { ValueKind: not (JsonValueKind.Null or JsonValueKind.Undefined) } value
            ? YamlEdit.Put(yaml, path, Written(value, 0))
            : YamlEdit.Remove(yaml, path);
    }

    private static object Step(JsonElement step) =>
        step.ValueKind switch
        {
            JsonValueKind.String => step.GetString()!,
            JsonValueKind.Number when step.TryGetInt32(out int at) => at,
            _ => throw new FormatException("A change leads nowhere."),
        };

    /// <summary>A value as YAML writes it on one line.</summary>
    private static string Written(JsonElement value, int depth) =>
        depth > DeepestValue ? throw new FormatException("A value is nested too deep.")
        : value.ValueKind == JsonValueKind.Array ? $"[{string.Join(", ", value.EnumerateArray().Select(v => Written(v, depth + 1)))}]"
        : value.ValueKind == JsonValueKind.Object
            ? $"{{ {string.Join(", ", value.EnumerateObject().Select(p => $"{YamlEdit.Scalar(p.Name)}: {Written(p.Value, depth + 1)}"))} }}"
        : value.ValueKind switch
        {
            JsonValueKind.String => YamlEdit.Scalar(value.GetString()!.Trim()),
            JsonValueKind.True => "yes",
            JsonValueKind.False => "no",
            _ => value.GetRawText(),
        };
}
