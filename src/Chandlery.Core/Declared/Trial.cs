using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A blend tried by nose: so many drops, grams or millilitres of each oil, how it smelt, and how well it was liked.</summary>
public sealed record Trial : IDeclaration
{
    /// <summary>File name without its ending.</summary>
    public required string Id { get; init; }

    /// <summary>Where it is declared.</summary>
    public required TextPlace Place { get; init; }

    /// <summary>What the maker calls it.</summary>
    public required string Name { get; init; }

    /// <summary>The day on which it was smelt.</summary>
    public required DateOnly On { get; init; }

    /// <summary>The oils, one at least; none of them as a share.</summary>
    public required IReadOnlyList<OilPart> Oils { get; init; }

    /// <summary>How it smells, in the maker's words; null when nothing is noted.</summary>
    public required string? Smells { get; init; }

    /// <summary>How well it was liked, 1 to 5; null when nobody has said.</summary>
    public required int? Stars { get; init; }

    /// <summary>The wax that it is meant for; null when none was chosen.</summary>
    public required Reference? Wax { get; init; }

    /// <summary>The load that it is meant for; null when none was chosen.</summary>
    public required FragranceLoad? Load { get; init; }
}
