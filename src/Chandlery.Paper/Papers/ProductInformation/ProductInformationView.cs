using Chandlery.Paper.Papers.SafetyDataSheets;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.ProductInformation;

/// <summary>Product information for a shop, in one language.</summary>
/// <param name="Lang">Code of the language.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Format">Name of the law's format that it is taken from.</param>
/// <param name="Note">Which parts are not in its language; empty for none.</param>
/// <param name="Picked">The subsections that a shop needs.</param>
internal sealed record ProductInformationView(
    string Lang,
    string Name,
    string Format,
    string Note,
    IReadOnlyList<SheetSubsectionView> Picked
) : ITemplateView
{
    /// <inheritdoc/>
    public string Template => "product-information.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [("lang", Lang), ("name", Name), ("format", Format), ("note", Note), ("picked", Picked)];
}
