using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>What the edition of the law leaves to others.</summary>
internal sealed class NotCoveredPart : ISheetPart
{
    /// <inheritdoc/>
    public SheetPart Name => SheetPart.NotCovered;

    /// <inheritdoc/>
    public IEnumerable<SheetBlock> Make(SheetContext context) =>
        context.Assessment.Edition.DoesNotCover.Select(left => new SheetText(
            context.Texts.Phrase(SheetPhrase.NotAssessedHere, ("what", context.Texts.Told(left)))
        ));
}
