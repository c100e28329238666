using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.SafetyFiles;
using Chandlery.Paper.Papers;

namespace Chandlery.Files.Recalls;

/// <summary>What the papers of a recall are made of.</summary>
/// <param name="Catalogue">The maker's declarations.</param>
/// <param name="Lawbook">Law and words.</param>
/// <param name="Shop">Templates and drawings.</param>
/// <param name="AsOf">The day of the recall.</param>
public sealed record RecallGround(Catalogue Catalogue, Lawbook Lawbook, PaperShop Shop, DateOnly AsOf)
{
    /// <summary>What kinds of product its candles are of.</summary>
    public DeclaredKinds Kinds { get; } = new(Lawbook.Kinds);
}
