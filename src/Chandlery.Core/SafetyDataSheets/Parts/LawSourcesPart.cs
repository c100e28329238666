using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>What the law was taken from.</summary>
internal sealed class LawSourcesPart : ISheetPart
{
    /// <inheritdoc/>
    public SheetPart Name => SheetPart.LawSources;

    /// <inheritdoc/>
    public IEnumerable<SheetBlock> Make(SheetContext context) =>
        context.Assessment.Edition.Sources.Select(source => new SheetText(context.Texts.Told(source + ".")));
}
