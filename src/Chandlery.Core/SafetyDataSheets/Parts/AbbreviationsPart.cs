using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>What abbreviations mean.</summary>
internal sealed class AbbreviationsPart : ISheetPart
{
    /// <inheritdoc/>
    public SheetPart Name => SheetPart.Abbreviations;

    /// <inheritdoc/>
    public IEnumerable<SheetBlock> Make(SheetContext context)
    {
        SheetConditions holding = SheetHolding.Of(context);
        IEnumerable<string> meanings = context
            .Abbreviations.Where(s => s.Stands(holding))
            .Select(s => $"{context.Texts.Label(s)}: {SheetMarkValues.Fill(s, context)}.");
        return [new SheetText(string.Join(' ', meanings))];
    }
}
