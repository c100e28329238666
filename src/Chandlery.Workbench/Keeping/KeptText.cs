namespace Chandlery.Workbench.Keeping;

/// <summary>A file's text as it was at a time.</summary>
/// <param name="At">When it was kept, in UTC.</param>
/// <param name="What">What was done.</param>
/// <param name="Hash">SHA-256 of the text; null when the file was put away.</param>
internal sealed record KeptText(DateTimeOffset At, string What, string? Hash);
