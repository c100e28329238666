namespace Chandlery.Paper.Scenes;

/// <summary>Pages with the metadata that a PDF carries.</summary>
/// <param name="Title">Title.</param>
/// <param name="Language">Language code.</param>
/// <param name="Pages">The pages.</param>
public sealed record PaperDocument(string Title, string Language, IReadOnlyList<Scene> Pages);
