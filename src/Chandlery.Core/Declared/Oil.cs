using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A fragrance oil as bought.</summary>
/// <param name="Id">File name without its ending.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Supplier">Who sells it.</param>
/// <param name="Document">Reference of the sheet that the figures come from.</param>
/// <param name="Revised">Revision date of that sheet.</param>
/// <param name="Ingredients">Its ingredient table.</param>
/// <param name="OwnClaims">The classes that the sheet gives the oil itself; null when it says nothing.</param>
/// <param name="FlashPoint">Flash point, when declared.</param>
/// <param name="Density">Density, when declared.</param>
/// <param name="DropMass">Mass of one drop, when measured.</param>
/// <param name="HighestLoad">The maker's highest load, when declared.</param>
/// <param name="Ifra">IFRA certificate, when there is one.</param>
/// <param name="NotDeclared">What the supplier says is missing from the sheet, in the reviewer's words.</param>
/// <param name="Draft">Where it was drafted from; null for a declaration that a person wrote.</param>
public sealed record Oil(
    string Id,
    TextPlace Place,
    string Name,
    string Supplier,
    string Document,
    DateOnly Revised,
    IReadOnlyList<Ingredient> Ingredients,
    IReadOnlyList<HazardClaim>? OwnClaims,
    FlashPoint? FlashPoint,
    GramsPerMillilitre? Density,
    Grams? DropMass,
    FragranceLoad? HighestLoad,
    IfraCertificate? Ifra,
    IReadOnlyList<string> NotDeclared,
    DraftOrigin? Draft = null
) : IDeclaration
{
    /// <summary>True for a draft that nobody has compared with its document yet.</summary>
    public bool IsUnreviewed => Draft is { Review: null };

    /// <summary>True when the sheet gives classes of the oil but no ingredients.</summary>
    public bool IsKnownOnlyAsWhole => Ingredients.Count == 0 && OwnClaims is not null;
}
