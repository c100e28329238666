using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Papers;

/// <summary>A paper that was made.</summary>
/// <param name="Document">Its pages.</param>
/// <param name="Warnings">What must be minded before it is handed out.</param>
public record MadePaper(PaperDocument Document, IReadOnlyList<string> Warnings) : PaperOutcome;
