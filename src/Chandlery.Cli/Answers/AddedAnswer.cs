namespace Chandlery.Cli.Answers;

/// <summary>An entry that was added to the register, for programs.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Batch">Batch code, or the candle's name.</param>
/// <param name="Candle">Name of the candle's declaration.</param>
/// <param name="Edition">The edition of the law.</param>
/// <param name="Hash">Its hash, which the next entry names.</param>
/// <param name="Doubts">What to look at, such as a batch that is entered already.</param>
internal sealed record AddedAnswer(long Number, string Batch, string Candle, string Edition, string Hash, IReadOnlyList<string> Doubts);
