using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A wax, or a blend of waxes.</summary>
/// <param name="Id">File name without its ending.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Supplier">Who sells it; the maker for an own blend.</param>
/// <param name="Ingredients">Its ingredient table; empty for a blend.</param>
/// <param name="Blend">The waxes it is blended of; empty for a plain wax.</param>
/// <param name="HighestLoad">Highest fragrance load that it holds, when declared.</param>
/// <param name="SolidDensity">Density of the cold wax, when declared.</param>
/// <param name="LiquidDensity">Density of the molten wax, when declared.</param>
/// <param name="MeltingPoint">Melting point, when declared.</param>
public sealed record Wax(
    string Id,
    TextPlace Place,
    string Name,
    string Supplier,
    IReadOnlyList<Ingredient> Ingredients,
    IReadOnlyList<WaxPart> Blend,
    FragranceLoad? HighestLoad,
    GramsPerMillilitre? SolidDensity,
    GramsPerMillilitre? LiquidDensity,
    Celsius? MeltingPoint = null
) : IDeclaration;
