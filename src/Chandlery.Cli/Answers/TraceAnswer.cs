namespace Chandlery.Cli.Answers;

/// <summary>The working of a result, for programs.</summary>
/// <param name="Candle">Name of the declaration.</param>
/// <param name="Edition">The edition of the law.</param>
/// <param name="Result">What was asked.</param>
/// <param name="Lines">The working, a line each.</param>
internal sealed record TraceAnswer(string Candle, string Edition, string Result, IReadOnlyList<string> Lines);
