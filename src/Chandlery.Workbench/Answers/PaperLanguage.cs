namespace Chandlery.Workbench.Answers;

/// <summary>A language that a paper can be had in.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Name">Its name.</param>
internal sealed record PaperLanguage(string Code, string Name);
