using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A dye, UV absorber or other additive.</summary>
public sealed record Extra : IDeclaration
{
    /// <summary>File name without its ending.</summary>
    public required string Id { get; init; }

    /// <summary>Where it is declared.</summary>
    public required TextPlace Place { get; init; }

    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>Who sells it.</summary>
    public required string Supplier { get; init; }

    /// <summary>What it is for, in the maker's words.</summary>
    public required string Purpose { get; init; }

    /// <summary>Its ingredient table.</summary>
    public required IReadOnlyList<Ingredient> Ingredients { get; init; }

    /// <summary>Highest share of the wax, when the supplier gives one.</summary>
    public required MassPercent? Highest { get; init; }

    /// <summary>What its sheet says for the poison centres.</summary>
    public MixtureSource Source { get; init; } = MixtureSource.NotDeclared;

    /// <summary>Whether it is there for its colour.</summary>
    public bool IsDye => Purpose.Contains("dye", StringComparison.OrdinalIgnoreCase);
}
