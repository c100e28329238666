using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;

namespace Chandlery.Core.Assessed;

/// <summary>Who stands behind a candle at its places of sale, and who is missing there.</summary>
/// <param name="Maker">The maker in law: under whose name it is sold.</param>
/// <param name="MakerCountry">Where that one is established; null when not declared.</param>
/// <param name="Others">Who must be named beside the maker, each once.</param>
/// <param name="Findings">Who is missing, or cannot be told to be due.</param>
public sealed record MarketRoles(
    Party Maker,
    string? MakerCountry,
    IReadOnlyList<(MarketRole Role, Party Party)> Others,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>The roles of a candle.</summary>
    /// <param name="maker">What the maker declares.</param>
    /// <param name="places">Places of sale.</param>
    /// <param name="law">The law on product safety.</param>
    /// <param name="day">The day whose law holds.</param>
    public static MarketRoles Of(Maker maker, IReadOnlyList<Place> places, ProductSafetyLaw law, DateOnly day)
    {
        MarketParties parties = maker.Parties;
        Party inLaw =
            parties.MadeFor ?? new Party(maker.Name, maker.AddressLines, parties.Country, maker.Telephone, maker.Email ?? maker.Web);
        var others = new List<(MarketRole, Party)>();
        var findings = new List<Finding>();
        foreach (Place place in places)
        {
            foreach (RoleDuty duty in law.For(law.Markets, place.Code)?.Roles.Where(d => Binds(d, place, day)) ?? [])
            {
                if (inLaw.Country is not { } country)
                {
                    findings.Add(
                        new Finding(
                            Gravity.Look,
                            $"The maker's country is not declared, so it cannot be told whether this holds: {duty.Says} Add 'country' to the maker.",
                            duty.Clause
                        )
                    );
                }
                else if (!duty.EstablishedIn.Contains(country))
                {
                    Party? found = Candidates(parties, duty.Role).FirstOrDefault(p => duty.EstablishedIn.Contains(p.Country!));
                    if (found is not null)
                    {
                        others.Add((duty.Role, found));
                    }
                    else
                    {
                        findings.Add(
                            new Finding(
                                duty.Stops ? Gravity.Stop : Gravity.Look,
                                $"{duty.Says} The maker is established in {country}, and for {place.Name} nobody is declared: add {FieldOf(duty.Role)} to the maker.",
                                duty.Clause
                            )
                        );
                    }
                }
            }
        }

        return new MarketRoles(inLaw, inLaw.Country, [.. others.Distinct()], [.. findings.DistinctBy(f => (f.What, f.Clause))]);
    }

    /// <summary>The maker as labels and papers name it: under whose name it is sold, with who must be named beside.</summary>
    public Maker OnLabel(Maker declared) =>
        declared with
        {
            Name = Maker.Name,
            AddressLines = [.. Maker.AddressLines, .. Others.Select(o => o.Party).Distinct().Select(p => $"{p.Country}: {p.OnOneLine}")],
            Telephone = Maker.Telephone ?? declared.Telephone,
            Email = declared.Parties.MadeFor is null ? declared.Email : Maker.Electronic,
            Web = declared.Parties.MadeFor is null ? declared.Web : null,
        };

    private static bool Binds(RoleDuty duty, Place place, DateOnly day) =>
        (duty.SoldIn.Count == 0 || duty.SoldIn.Contains(place.Code)) && duty.InForce.On(day);

    private static IEnumerable<Party> Candidates(MarketParties parties, MarketRole role) =>
        role == MarketRole.Importer ? parties.Importers : parties.ResponsiblePersons.Concat(parties.Importers);

    private static string FieldOf(MarketRole role) => role == MarketRole.Importer ? "'importers'" : "'responsiblePersons'";
}
