namespace Chandlery.Workbench.Desks;

/// <summary>A paper that the page asks for.</summary>
/// <param name="Kind">Kind of paper; null for the label.</param>
/// <param name="Edition">Edition of the law; null for the first.</param>
/// <param name="Language">Code of the language, for papers that are made in one at a time; null for the first.</param>
/// <param name="Count">How many candles, for the bench sheet.</param>
/// <param name="Format">pdf, png, svg, yaml or json; null for pdf.</param>
public sealed record PaperWish(
    string? Kind = null,
    string? Edition = null,
    string? Language = null,
    int? Count = null,
    string? Format = null
);
