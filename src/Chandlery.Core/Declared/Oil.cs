using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A fragrance oil as bought.</summary>
public sealed record Oil : IDeclaration
{
    /// <summary>File name without its ending.</summary>
    public required string Id { get; init; }

    /// <summary>How it was written.</summary>
    public Writing Writing { get; init; } = Writing.Plain;

    /// <summary>Where it is declared.</summary>
    public required TextPlace Place { get; init; }

    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>Who sells it.</summary>
    public required string Supplier { get; init; }

    /// <summary>Reference of the sheet that the figures come from.</summary>
    public required string Document { get; init; }

    /// <summary>Revision date of that sheet.</summary>
    public required DateOnly Revised { get; init; }

    /// <summary>Its ingredient table.</summary>
    public required IReadOnlyList<Ingredient> Ingredients { get; init; }

    /// <summary>The classes that the sheet gives the oil itself; null when it says nothing.</summary>
    public required IReadOnlyList<HazardClaim>? OwnClaims { get; init; }

    /// <summary>Flash point, when declared.</summary>
    public required FlashPoint? FlashPoint { get; init; }

    /// <summary>Density, when declared.</summary>
    public required GramsPerMillilitre? Density { get; init; }

    /// <summary>Mass of one drop, when measured.</summary>
    public required Grams? DropMass { get; init; }

    /// <summary>The maker's highest load, when declared.</summary>
    public required FragranceLoad? HighestLoad { get; init; }

    /// <summary>IFRA certificate, when there is one.</summary>
    public required IfraCertificate? Ifra { get; init; }

    /// <summary>What the supplier says is missing from the sheet, in the reviewer's words.</summary>
    public required IReadOnlyList<string> NotDeclared { get; init; }

    /// <summary>The note that it plays; null when nobody has said.</summary>
    public Scent? Note { get; init; }

    /// <summary>What its sheet says for the poison centres.</summary>
    public MixtureSource Source { get; init; } = MixtureSource.NotDeclared;

    /// <summary>Where it was drafted from; null for a declaration that a person wrote.</summary>
    public DraftOrigin? Draft { get; init; }

    /// <summary>True for a draft that nobody has compared with its document yet.</summary>
    public bool IsUnreviewed => Draft is { Review: null };

    /// <summary>True when the sheet gives classes of the oil but no ingredients.</summary>
    public bool IsKnownOnlyAsWhole => Ingredients.Count == 0 && OwnClaims is not null;
}
