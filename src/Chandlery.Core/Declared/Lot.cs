using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>What was bought at once: so much of one material under the supplier's lot code.</summary>
public sealed record Lot : IDeclaration
{
    /// <summary>File name without its ending.</summary>
    public required string Id { get; init; }

    /// <summary>Where it is declared.</summary>
    public required TextPlace Place { get; init; }

    /// <summary>What kind of thing it is.</summary>
    public required LotContent Content { get; init; }

    /// <summary>The declaration that was bought; for wicks their kind, in the maker's words.</summary>
    public required Reference Of { get; init; }

    /// <summary>The supplier's lot code.</summary>
    public required string Code { get; init; }

    /// <summary>Day of purchase.</summary>
    public required DateOnly Bought { get; init; }

    /// <summary>From whom.</summary>
    public required string From { get; init; }

    /// <summary>Delivery note, certificate or sheet that came with it; null when none is noted.</summary>
    public required string? Document { get; init; }

    /// <summary>How much, when weighed.</summary>
    public required Grams? Weight { get; init; }

    /// <summary>How many, when counted.</summary>
    public required int? Pieces { get; init; }

    /// <summary>What was paid for all of it, in the maker's currency; null when not noted.</summary>
    public Money? Paid { get; init; }

    /// <summary>The day until which it is best; null when not noted.</summary>
    public DateOnly? BestBefore { get; init; }

    /// <summary>What people call the thing that was bought; as the lot names it where nothing is declared under that name.</summary>
    /// <param name="catalogue">The maker's declarations.</param>
    public string CalledIn(Catalogue catalogue)
    {
        string? declared = Content switch
        {
            LotContent.Oil => catalogue.OfKind<Oil>().FirstOrDefault(o => o.Id == Of.Id)?.Name,
            LotContent.Wax => catalogue.OfKind<Wax>().FirstOrDefault(w => w.Id == Of.Id)?.Name,
            LotContent.Extra => catalogue.OfKind<Extra>().FirstOrDefault(e => e.Id == Of.Id)?.Name,
            LotContent.Vessel => catalogue.OfKind<Vessel>().FirstOrDefault(v => v.Id == Of.Id)?.Name,
            _ => null,
        };
        return declared ?? Of.Id;
    }
}
