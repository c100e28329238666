using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A wax, a blend of waxes, or the liquid base that a diffuser's or a spray's oils are dissolved in.</summary>
public sealed record Wax : IDeclaration
{
    /// <summary>File name without its ending.</summary>
    public required string Id { get; init; }

    /// <summary>How it was written.</summary>
    public Writing Writing { get; init; } = Writing.Plain;

    /// <summary>Where it is declared.</summary>
    public required TextPlace Place { get; init; }

    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>Who sells it; the maker for an own blend.</summary>
    public required string Supplier { get; init; }

    /// <summary>Its ingredient table; empty for a blend.</summary>
    public required IReadOnlyList<Ingredient> Ingredients { get; init; }

    /// <summary>The waxes it is blended of; empty for a plain wax.</summary>
    public required IReadOnlyList<WaxPart> Blend { get; init; }

    /// <summary>Highest fragrance load that it holds, when declared.</summary>
    public required FragranceLoad? HighestLoad { get; init; }

    /// <summary>Density of the cold wax, when declared.</summary>
    public required GramsPerMillilitre? SolidDensity { get; init; }

    /// <summary>Density of the molten wax, when declared.</summary>
    public required GramsPerMillilitre? LiquidDensity { get; init; }

    /// <summary>True for a liquid base; its density is that of the liquid.</summary>
    public bool IsBase { get; init; }

    /// <summary>Melting point, when declared.</summary>
    public Celsius? MeltingPoint { get; init; }

    /// <summary>What its sheet says for the poison centres.</summary>
    public MixtureSource Source { get; init; } = MixtureSource.NotDeclared;
}
