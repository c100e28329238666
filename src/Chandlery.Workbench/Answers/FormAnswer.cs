using System.Text.Json.Nodes;

namespace Chandlery.Workbench.Answers;

/// <summary>A declaration with its edits.</summary>
/// <param name="Declares">Its kind.</param>
/// <param name="Id">Its name; for a new one the name that it would get.</param>
/// <param name="Hash">Hash of the text on disk; null for a new one.</param>
/// <param name="Values">The fields with the edits; null when the text cannot be read.</param>
/// <param name="Yaml">The text with the edits.</param>
/// <param name="Problems">What is wrong.</param>
/// <param name="UsedBy">Candles, batches and others that name it.</param>
internal sealed record FormAnswer(
    string Declares,
    string Id,
    string? Hash,
    JsonObject? Values,
    string Yaml,
    IReadOnlyList<DeskProblem> Problems,
    IReadOnlyList<string> UsedBy
);
