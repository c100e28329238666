using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A dye, UV absorber or other additive.</summary>
/// <param name="Id">File name without its ending.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Supplier">Who sells it.</param>
/// <param name="Purpose">What it is for, in the maker's words.</param>
/// <param name="Ingredients">Its ingredient table.</param>
/// <param name="Highest">Highest share of the wax, when the supplier gives one.</param>
public sealed record Extra(
    string Id,
    TextPlace Place,
    string Name,
    string Supplier,
    string Purpose,
    IReadOnlyList<Ingredient> Ingredients,
    MassPercent? Highest
) : IDeclaration;
