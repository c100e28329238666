using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>That a program drafted a declaration from PDFs.</summary>
/// <param name="Files">The PDFs' names.</param>
/// <param name="Review">Who reviewed it; null as long as nobody has, and then no label is printed with it.</param>
/// <param name="Place">Where the review stands.</param>
public sealed record DraftOrigin(IReadOnlyList<string> Files, Review? Review, TextPlace Place);
