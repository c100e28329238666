using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law.ProductSafety;

/// <summary>A duty of the maker beside the hazard label.</summary>
/// <param name="Id">Short name.</param>
/// <param name="InForce">When it holds.</param>
/// <param name="SoldIn">Places of sale for which it holds; empty for all under the law.</param>
/// <param name="Says">What is due.</param>
/// <param name="By">What of the maker's own shows that it is done.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record DutyRow(string Id, InForce InForce, IReadOnlyList<string> SoldIn, string Says, Artefact By, Citation Clause)
{
    /// <summary>The sorts of product for which it holds; all where none is named.</summary>
    public IReadOnlyList<ProductSort> Of { get; init; } = Enum.GetValues<ProductSort>();
}
