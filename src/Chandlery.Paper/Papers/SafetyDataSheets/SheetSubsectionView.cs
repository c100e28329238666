using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.SafetyDataSheets;

/// <summary>A subsection of a safety data sheet.</summary>
/// <param name="Number">Such as 2.1.</param>
/// <param name="Title">Its heading; empty where the section has only one part.</param>
/// <param name="Blocks">Its contents.</param>
internal sealed record SheetSubsectionView(string Number, string Title, IReadOnlyList<SheetBlockView> Blocks) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("number", Number), ("title", Title), ("blocks", Blocks)];

    /// <summary>The view of a subsection.</summary>
    public static SheetSubsectionView Of(SheetSubsection subsection) =>
        new(subsection.Number, subsection.Title, [.. subsection.Blocks.Select(SheetBlockView.Of)]);
}
