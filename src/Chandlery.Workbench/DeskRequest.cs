namespace Chandlery.Workbench;

/// <summary>What the page sends: a candle and what was changed on it.</summary>
/// <param name="Id">Name of the candle or batch.</param>
/// <param name="Edits">What was changed; null for nothing.</param>
/// <param name="Hash">Hash of the text that the page had read, for saving.</param>
/// <param name="Edition">Edition of the law, for papers.</param>
/// <param name="Kind">Kind of paper.</param>
/// <param name="Format">pdf, png, svg, yaml or json.</param>
/// <param name="Count">How many candles, for the bench sheet.</param>
/// <param name="By">Who issues, for the register.</param>
/// <param name="Language">Code of the language, for papers that are made in one at a time; null for the first.</param>
public sealed record DeskRequest(
    string Id,
    CandleEdits? Edits = null,
    string? Hash = null,
    string? Edition = null,
    string? Kind = null,
    string? Format = null,
    int? Count = null,
    string? By = null,
    string? Language = null
);
