using Chandlery.Core.Law;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>The suppliers' documents that the sheet was computed from.</summary>
internal sealed class DocumentsPart : ISheetPart
{
    /// <inheritdoc/>
    public SheetPart Name => SheetPart.Documents;

    /// <inheritdoc/>
    public IEnumerable<SheetBlock> Make(SheetContext context) =>
        context
            .Assessment.Composition.Recipe.Oils.Select(o => o.Oil)
            .Select(oil => new SheetText(
                context.Texts.Phrase(
                    SheetPhrase.Document,
                    ("oil", oil.Name),
                    ("supplier", oil.Supplier),
                    ("document", oil.Document),
                    ("revised", IsoDay.Plain(oil.Revised))
                )
            ));
}
