using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Desks;
using Chandlery.Workbench.Forms;

namespace Chandlery.Workbench.Endpoints;

/// <summary>What the page must know once: the forms of all declarations, places of sale, languages, designs.</summary>
internal static class ShapesEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Get(
            "/api/shapes",
            _ =>
                Endpoint.Json(
                    new ShapesAnswer(
                        FormShapes.All,
                        [.. rooms.Current.Lawbook.Places.Select(p => new PlaceOffer(p.Code.Text, p.Name))],
                        [.. rooms.Current.Shop.Designs.Names.Select(n => new DesignOffer(n, rooms.Current.Shop.Designs.About(n)))],
                        [.. LabelStocks.All.Select(s => new StockOffer(s.Id, s.Name, s.Sheet?.Count))],
                        [.. rooms.Current.Lawbook.Kinds.Select(k => new KindOffer(k.Id, k.Name))]
                    ),
                    PageJson.Default.ShapesAnswer
                )
        );
}
