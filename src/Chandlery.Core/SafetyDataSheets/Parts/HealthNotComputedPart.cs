using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>Classes for health that are not computed, with the reason.</summary>
internal sealed class HealthNotComputedPart : ISheetPart
{
    /// <inheritdoc/>
    public SheetPart Name => SheetPart.HealthNotComputed;

    /// <inheritdoc/>
    public IEnumerable<SheetBlock> Make(SheetContext context) =>
        [
            new SheetTable(
                [30, 70],
                [],
                [.. context.HealthNotComputed.Select(n => new[] { n.Hazards[0].ClassCode, context.Texts.Told($"{n.Why} ({n.Clause})") })]
            ),
        ];
}
