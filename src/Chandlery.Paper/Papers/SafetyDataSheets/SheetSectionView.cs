using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.SafetyDataSheets;

/// <summary>A section of a safety data sheet.</summary>
/// <param name="Number">1 to 16.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Subsections">Its subsections.</param>
internal sealed record SheetSectionView(int Number, string Title, IReadOnlyList<SheetSubsectionView> Subsections) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("number", Number), ("title", Title), ("subsections", Subsections)];

    /// <summary>The view of a section.</summary>
    public static SheetSectionView Of(SheetSection section) =>
        new(section.Number, section.Title, [.. section.Subsections.Select(SheetSubsectionView.Of)]);
}
