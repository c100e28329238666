using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>How a liquid is classified as flammable: by what was measured of it, never by the shares of its parts.</summary>
public sealed record FlashRule : ClassRule
{
    /// <summary>The categories, worst first; the first that takes the flash point and the boiling point decides.</summary>
    public required IReadOnlyList<FlashRung> Rungs { get; init; }

    /// <summary>Names of the methods whose flash points count.</summary>
    public required IReadOnlyList<string> Methods { get; init; }

    /// <summary>Where the methods stand.</summary>
    public required Citation MethodsClause { get; init; }

    /// <summary>When a category need not be given; null for never.</summary>
    public required CombustionRelief? Relief { get; init; }

    /// <inheritdoc/>
    public override IEnumerable<HazardCategory> Results => Rungs.Select(r => r.Result);
}
