using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Scenes;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Desks;
using Chandlery.Workbench.Forms;
using Chandlery.Yaml;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>Every design of fronts, drawn with the candle on the desk.</summary>
internal static class DesignsEndpoint
{
    private const string Piece = "front";

    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post("/api/designs", PageJson.Default.DesignsRequest, request => Answer(rooms.Current, request));

    private static IResult Answer(Workroom room, DesignsRequest request)
    {
        if (CandleDesk.Lay(room, request.Id, request.Edits, Workroom.Today) is not { } desk)
        {
            return Endpoint.Missing("There is no candle of that name in the folder.");
        }

        if (DeskPapers.Chosen(desk, null) is not { } a || desk.Catalogue.Find<Wax>(a.Candle.Wax, new Problems()) is not { } wax)
        {
            return Endpoint.Refused("The candle cannot be assessed; see the problems.");
        }

        var paper = new PaperRequest(a, a.Languages[0], wax, room.Lawbook, room.Shop, new PaperSettings())
        {
            Catalogue = desk.Catalogue,
            OpensBrand = BrandOf(room, request),
        };
        return Endpoint.Json(new DesignsAnswer([.. room.Shop.Designs.Names.Select(n => Drawn(paper, n))]), PageJson.Default.DesignsAnswer);
    }

    // A brand that is being edited is drawn as it is edited.
    private static Lazy<BrandKit> BrandOf(Workroom room, DesignsRequest request)
    {
        if (request.Brand is null)
        {
            return room.Brand();
        }

        string? id = room.Folder().Catalogue.OfKind<Brand>().FirstOrDefault()?.Id;
        return FormDesk.Lay(room, new FormRequest("brand", id, request.Brand)) is { Declared: { } edited }
            ? BrandFiles.WhenAsked(CandleDesk.With(room.Folder(), edited, new Problems()))
            : room.Brand();
    }

    private static DrawnDesign Drawn(PaperRequest paper, string name)
    {
        PaperDocument? document = DesignPieces.Draw(paper, name, Piece, new Problems());
        return new DrawnDesign(name, document is null ? null : DeskPapers.Pages(document).First());
    }
}
