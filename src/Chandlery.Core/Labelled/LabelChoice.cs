namespace Chandlery.Core.Labelled;

/// <summary>Something on the label with the reason why it is there, or why it is not.</summary>
/// <param name="Code">Code of the statement or pictogram.</param>
/// <param name="Because">The reason.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record LabelChoice(string Code, string Because, string Clause);
