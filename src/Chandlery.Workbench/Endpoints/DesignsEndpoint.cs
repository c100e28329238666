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

    private static IResult Answer(Workroom room, DesignsRequest request) =>
        OnDesk.Answer(room, request.Id, request.Edits, desk => Answer(room, desk, request));

    private static IResult Answer(Workroom room, CandleDesk desk, DesignsRequest request)
    {
        if (DeskPapers.Chosen(desk, null) is not { } a)
        {
            return OnDesk.NotAssessed;
        }

        PaperRequest paper = DeskPapers.Request(room, desk, a, a.Languages[0], BrandOf(room, request));
        return Endpoint.Json(new DesignsAnswer([.. room.Shop.Designs.Names.Select(n => Drawn(paper, n))]), PageJson.Default.DesignsAnswer);
    }

    // A brand that is being edited is drawn as it is edited.
    private static Lazy<BrandKit> BrandOf(Workroom room, DesignsRequest request)
    {
        if (request.Brand is null)
        {
            return room.Brand;
        }

        string? id = room.Folder().Catalogue.OfKind<Brand>().FirstOrDefault()?.Id;
        return FormDesk.Lay(room, new FormRequest("brand", id, request.Brand)) is { Declared: { } edited } form
            ? BrandFiles.WhenAsked(CandleDesk.With(form.Folder, edited, new Problems()))
            : room.Brand;
    }

    private static DrawnDesign Drawn(PaperRequest paper, string name)
    {
        PaperDocument? document = DesignPieces.Draw(paper, name, Piece, new Problems());
        return new DrawnDesign(name, document is null ? null : DeskPapers.Pages(document).First());
    }
}
