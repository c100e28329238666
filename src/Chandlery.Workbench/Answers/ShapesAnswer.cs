using Chandlery.Workbench.Forms;

namespace Chandlery.Workbench.Answers;

/// <summary>What the page must know once.</summary>
/// <param name="Forms">The fields of each kind of declaration.</param>
/// <param name="Places">Places of sale.</param>
/// <param name="Designs">Designs of fronts.</param>
/// <param name="Stocks">Sheets and rolls of labels.</param>
/// <param name="Kinds">Kinds of product.</param>
internal sealed record ShapesAnswer(
    IReadOnlyDictionary<string, IReadOnlyList<FormField>> Forms,
    IReadOnlyList<PlaceOffer> Places,
    IReadOnlyList<DesignOffer> Designs,
    IReadOnlyList<StockOffer> Stocks,
    IReadOnlyList<KindOffer> Kinds
);
