namespace Chandlery.Core.Declared;

/// <summary>Who stands behind the candle beside the one who pours it.</summary>
/// <param name="Country">Country code of the place where the maker is established; null when not declared.</param>
/// <param name="MadeFor">Under whose name it is sold, which makes that one its maker in law; null when the maker's own.</param>
/// <param name="Importers">Who brings it on the market where the maker is not established.</param>
/// <param name="ResponsiblePersons">Who answers for it where the maker is not established.</param>
/// <param name="ContactPoint">The single place to turn to; null for the maker's own electronic address.</param>
public sealed record MarketParties(
    string? Country,
    Party? MadeFor,
    IReadOnlyList<Party> Importers,
    IReadOnlyList<Party> ResponsiblePersons,
    string? ContactPoint
)
{
    /// <summary>Nothing declared.</summary>
    public static MarketParties None { get; } = new(null, null, [], [], null);
}
