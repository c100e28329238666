namespace Chandlery.Workbench.Answers;

/// <summary>An entry of the register in a line.</summary>
/// <param name="Number">Its number.</param>
/// <param name="At">When it was made, in UTC.</param>
/// <param name="By">Who issued.</param>
/// <param name="Batch">Batch code; the candle's name when it has none.</param>
/// <param name="Candle">The candle's trade name.</param>
/// <param name="Law">Edition of the law and the day that it was asked for.</param>
/// <param name="Oils">The oils with the documents that their facts come from.</param>
/// <param name="Documents">Names of the papers.</param>
internal sealed record RegisterLine(
    long Number,
    string At,
    string By,
    string Batch,
    string Candle,
    string Law,
    IReadOnlyList<string> Oils,
    IReadOnlyList<string> Documents
);
