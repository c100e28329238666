using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.SafetyDataSheets;

/// <summary>A section of a safety data sheet.</summary>
/// <param name="Heading">The word for a section with its number, in the order of the language.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Subsections">Its subsections.</param>
internal sealed record SheetSectionView(string Heading, string Title, IReadOnlyList<SheetSubsectionView> Subsections) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("heading", Heading), ("title", Title), ("subsections", Subsections)];

    /// <summary>The view of a section.</summary>
    /// <param name="section">The section.</param>
    /// <param name="heading">The word for a section, with <c>{number}</c> in the place of its number.</param>
    public static SheetSectionView Of(SheetSection section, string heading) =>
        new(
            heading.Replace("{number}", Figures.Plain(section.Number), StringComparison.Ordinal),
            section.Title,
            [.. section.Subsections.Select(SheetSubsectionView.Of)]
        );
}
