using Chandlery.Core.Labelled;
using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>The law's statement on ingredients of unknown hazard to the aquatic environment.</summary>
internal sealed class UnknownAquaticPart : ISheetPart
{
    /// <inheritdoc/>
    public SheetPart Name => SheetPart.UnknownAquatic;

    /// <inheritdoc/>
    public IEnumerable<SheetBlock> Make(SheetContext context) =>
        context.Assessment.Classification.UnknownAquatic is { } unknown
            ? [new SheetText(StatementText.UnknownAquatic(context.Language, unknown))]
            : [];
}
