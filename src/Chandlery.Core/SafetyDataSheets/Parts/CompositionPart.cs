using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>The substances that section 3 names.</summary>
internal sealed class CompositionPart : ISheetPart
{
    private static readonly string[] Heads = ["name", "cas", "ec", "share", "classes", "special"];

    /// <inheritdoc/>
    public SheetPart Name => SheetPart.Composition;

    /// <inheritdoc/>
    public IEnumerable<SheetBlock> Make(SheetContext context)
    {
        SheetTexts texts = context.Texts;
        var row = new SubstanceRow(texts, context.Figures);
        return [new SheetTable([98, 44, 42, 51, 84, 92], [.. Heads.Select(texts.Word)], [.. context.Named.Select(row.Cells)])];
    }
}
