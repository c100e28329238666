namespace Chandlery.Core.Law.ProductSafety;

/// <summary>
/// The law on the safety of products beside the hazard label, by place of sale. Several places share one, and a place may have one
/// without an edition for its labels.
/// </summary>
/// <param name="ByPlace">Short name of the law, by country code of the place.</param>
public sealed record ProductSafetyLaw(IReadOnlyDictionary<string, string> ByPlace)
{
    /// <summary>What must be there before a candle is sold.</summary>
    public required Shelf<MarketRules> Markets { get; init; }

    /// <summary>What offers and advertisements must show.</summary>
    public required Shelf<ListingRules> Listings { get; init; }

    /// <summary>What a recall holds.</summary>
    public required Shelf<RecallRules> Recalls { get; init; }

    /// <summary>Within which time incidents are reported.</summary>
    public required Shelf<IncidentRules> Incidents { get; init; }

    /// <summary>What contents a package may have.</summary>
    public required Shelf<QuantityRules> Quantities { get; init; }

    /// <summary>Marks on packaging and registers of its producers.</summary>
    public required Shelf<PackagingRules> Packagings { get; init; }

    /// <summary>What is due beside all this.</summary>
    public required Shelf<DutyRules> Duties { get; init; }

    /// <summary>Our words for listings and recalls, by language.</summary>
    public required Shelf<SafetyWords> Words { get; init; }

    /// <summary>Our words for the form by which an authority is told of a recall, by language; English at least.</summary>
    public required Shelf<SafetyWords> AuthorityWords { get; init; }

    /// <summary>Our words for the page on how a maker looks after product safety, by language; English at least.</summary>
    public required Shelf<SafetyWords> ProcedureWords { get; init; }

    /// <summary>What a technical file holds, whatever the place.</summary>
    public required Lazy<FileRules> File { get; init; }

    /// <summary>A law's part for a place; null where no rule is known.</summary>
    public T? For<T>(Shelf<T> shelf, string place)
        where T : class => ByPlace.TryGetValue(place, out string? id) ? shelf.Find(id) : null;

    /// <summary>Reads all that was not read yet.</summary>
    public void ReadAll()
    {
        Markets.ReadAll();
        Listings.ReadAll();
        Recalls.ReadAll();
        Incidents.ReadAll();
        Quantities.ReadAll();
        Packagings.ReadAll();
        Duties.ReadAll();
        Words.ReadAll();
        AuthorityWords.ReadAll();
        ProcedureWords.ReadAll();
        _ = File.Value;
    }
}
