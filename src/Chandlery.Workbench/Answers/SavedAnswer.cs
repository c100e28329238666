namespace Chandlery.Workbench.Answers;

/// <summary>That a candle was saved.</summary>
/// <param name="Hash">Hash of the text now on disk.</param>
internal sealed record SavedAnswer(string Hash);
