using Chandlery.Core.SafetyFiles.Records;
using Chandlery.Paper.Papers.SafetyDataSheets;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Records;

/// <summary>A section of a kept document.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Blocks">Texts and tables.</param>
internal sealed record RecordSectionView(string Title, IReadOnlyList<SheetBlockView> Blocks) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("title", Title), ("blocks", Blocks)];

    /// <summary>The view of a section.</summary>
    public static RecordSectionView Of(RecordSection section) => new(section.Title, [.. section.Blocks.Select(SheetBlockView.Of)]);
}
