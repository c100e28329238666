using System.Text.Json;

namespace Chandlery.Workbench.Forms;

/// <summary>What the page changes in a declaration: one value.</summary>
/// <param name="Path">Names of fields and positions in lists that lead to it.</param>
/// <param name="Value">The value: a text, a list or a group of fields; null to take it out.</param>
public sealed record FieldEdit(IReadOnlyList<JsonElement> Path, JsonElement? Value);
