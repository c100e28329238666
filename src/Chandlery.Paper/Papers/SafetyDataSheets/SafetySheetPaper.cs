using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.SafetyDataSheets;

/// <summary>The safety data sheet.</summary>
public sealed class SafetySheetPaper() : SheetPaper("safety-sheet", "Safety data sheet")
{
    /// <inheritdoc/>
    protected override PaperDocument? Print(SafetySheet sheet, PaperShop shop, Problems problems) =>
        SafetySheetDocument.Make(sheet, shop, problems);
}
