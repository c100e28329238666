using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.SafetyDataSheets;

/// <summary>A safety data sheet in one language.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Lang">Code of the language.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Format">Name of the law's format.</param>
/// <param name="Warnings">What must stand on its first page.</param>
/// <param name="Sections">The 16 sections.</param>
internal sealed record SafetySheetView(
    string Title,
    string Lang,
    string Name,
    string Format,
    IReadOnlyList<string> Warnings,
    IReadOnlyList<SheetSectionView> Sections
) : ITemplateView
{
    /// <inheritdoc/>
    public string Template => "safety-sheet.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [("title", Title), ("lang", Lang), ("name", Name), ("format", Format), ("warnings", Warnings), ("sections", Sections)];
}
