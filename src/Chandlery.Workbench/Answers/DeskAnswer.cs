using System.Text.Json;

namespace Chandlery.Workbench.Answers;

/// <summary>A candle with its edits and what follows from them.</summary>
/// <param name="Maker">The maker declared in the folder; the folder's name when there is none.</param>
/// <param name="Id">Name of the declaration.</param>
/// <param name="Hash">Hash of the text on disk, to be sent back with a save.</param>
/// <param name="Yaml">The text with the edits.</param>
/// <param name="Editable">True for a candle, false for a batch.</param>
/// <param name="Form">What the form shows; null when the text cannot be read or declares a batch.</param>
/// <param name="Oils">The oils that the folder declares.</param>
/// <param name="Recipe">The blend in several measures; null when there is no assessment.</param>
/// <param name="Assessments">One for each edition, in the published form.</param>
/// <param name="Papers">The papers that can be asked for.</param>
/// <param name="Plot">Load against consequences; null when there is nothing to draw.</param>
/// <param name="Problems">What is wrong.</param>
internal sealed record DeskAnswer(
    string Maker,
    string Id,
    string Hash,
    string Yaml,
    bool Editable,
    CandleForm? Form,
    IReadOnlyList<OilName> Oils,
    IReadOnlyList<RecipeLine>? Recipe,
    IReadOnlyList<JsonElement> Assessments,
    IReadOnlyList<PaperOffer> Papers,
    LoadPlot? Plot,
    IReadOnlyList<DeskProblem> Problems
);
