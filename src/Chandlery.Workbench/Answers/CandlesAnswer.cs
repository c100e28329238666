using Chandlery.Core.Asked.Comparisons;

namespace Chandlery.Workbench.Answers;

/// <summary>The candles and batches of the folder.</summary>
/// <param name="Rows">A line for each under each edition of the law.</param>
/// <param name="Wrong">Those that cannot be assessed, with the reason.</param>
internal sealed record CandlesAnswer(IReadOnlyList<CatalogueRow> Rows, IReadOnlyList<WrongCandle> Wrong);
