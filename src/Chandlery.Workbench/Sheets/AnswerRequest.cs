using Chandlery.Workbench.Forms;

namespace Chandlery.Workbench.Sheets;

/// <summary>What the maker answers to a draft.</summary>
/// <param name="Id">Name of the oil's declaration.</param>
/// <param name="Hash">Hash of the text that the page had read.</param>
/// <param name="Edits">Values that were corrected; null for none.</param>
/// <param name="Answered">Doubts that are answered thereby, word for word; null for none.</param>
internal sealed record AnswerRequest(
    string Id,
    string? Hash,
    IReadOnlyList<FieldEdit>? Edits = null,
    IReadOnlyList<string>? Answered = null
);
