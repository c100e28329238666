namespace Chandlery.Cli.Answers;

/// <summary>Where candles of a batch went, for programs.</summary>
/// <param name="Batch">Name of the batch's declaration.</param>
/// <param name="On">The day.</param>
/// <param name="Pieces">How many.</param>
/// <param name="Country">Country code.</param>
/// <param name="ToWhom">shop or person, in a word.</param>
/// <param name="Receiver">The name; null when it was taken out.</param>
/// <param name="Forgotten">When the name was taken out; null when it was not.</param>
internal sealed record DispatchAnswer(
    string Batch,
    string On,
    int Pieces,
    string Country,
    string ToWhom,
    string? Receiver,
    string? Forgotten
)
{
    /// <summary>Until when the name was allowed to be kept, where that day is past; else null.</summary>
    public required string? KeptTooLongSince { get; init; }
}
