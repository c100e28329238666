using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Composed;

/// <summary>Where a part of an ingredient comes from.</summary>
/// <param name="Product">The oil, wax or extra.</param>
/// <param name="Document">Reference and date of its sheet; empty for waxes and extras.</param>
/// <param name="ProductShare">Share of the product in the finished candle.</param>
/// <param name="DeclaredShare">The ingredient's share of the product, as declared.</param>
/// <param name="Low">Low end of this part, percent of the finished candle.</param>
/// <param name="High">High end of this part, percent of the finished candle.</param>
/// <param name="Ingredient">The declared line.</param>
public sealed record Contribution(
    string Product,
    string Document,
    MassPercent ProductShare,
    string DeclaredShare,
    MassPercent Low,
    MassPercent High,
    Ingredient Ingredient
);
