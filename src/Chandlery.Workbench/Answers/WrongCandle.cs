namespace Chandlery.Workbench.Answers;

/// <summary>A candle or batch that cannot be assessed.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Why">What is wrong.</param>
internal sealed record WrongCandle(string Id, string Why);
