using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>What could not be assessed.</summary>
internal sealed class UnassessedPart : ISheetPart
{
    /// <inheritdoc/>
    public SheetPart Name => SheetPart.Unassessed;

    /// <inheritdoc/>
    public IEnumerable<SheetBlock> Make(SheetContext context) =>
        context.Assessment.Unassessed.Select(open => new SheetText(context.Texts.Told(open)));
}
