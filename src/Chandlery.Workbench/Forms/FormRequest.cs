namespace Chandlery.Workbench.Forms;

/// <summary>A declaration of any kind as the page edits it.</summary>
/// <param name="Declares">Its kind.</param>
/// <param name="Id">Its name; null or empty for one that is not kept yet.</param>
/// <param name="Edits">What was changed; null for nothing.</param>
/// <param name="Hash">Hash of the text that the page had read, for keeping; null for a new one.</param>
/// <param name="What">What was done, in words, for the history; null for a plain change.</param>
public sealed record FormRequest(
    string Declares,
    string? Id = null,
    IReadOnlyList<FieldEdit>? Edits = null,
    string? Hash = null,
    string? What = null
);
