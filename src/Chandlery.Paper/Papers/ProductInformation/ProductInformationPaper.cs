using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Papers.SafetyDataSheets;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.ProductInformation;

/// <summary>Product information for shops.</summary>
public sealed class ProductInformationPaper() : SheetPaper("product-information", "Product information")
{
    /// <inheritdoc/>
    protected override PaperDocument? Print(SafetySheet sheet, PaperShop shop, Problems problems) =>
        ProductInformationDocument.Make(sheet, shop, problems);
}
