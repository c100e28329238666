using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A gift set: several products in one box.</summary>
public sealed record GiftSet : IDeclaration
{
    /// <summary>File name without its ending.</summary>
    public required string Id { get; init; }

    /// <summary>Where it is declared.</summary>
    public required TextPlace Place { get; init; }

    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>What is in it.</summary>
    public required IReadOnlyList<SetPart> Parts { get; init; }

    /// <summary>Whether every label inside can be read without opening the box.</summary>
    public required bool IsSeenThrough { get; init; }

    /// <summary>The places of sale, by code or name.</summary>
    public required IReadOnlyList<Written<PlaceName>> SoldIn { get; init; }
}
