namespace Chandlery.Workbench.Answers;

/// <summary>A supplier's PDF.</summary>
/// <param name="Name">Name of the file as it came.</param>
/// <param name="Pages">Its pages as the program read them.</param>
internal sealed record SheetDocument(string Name, IReadOnlyList<PreviewPage> Pages);
