using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles.Listings;
using Chandlery.Files;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Desks;
using Chandlery.Yaml;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>What a web shop or an advertisement must say of a candle: to look at, or as a file.</summary>
internal static class ListingEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post(
            "/api/listing",
            PageJson.Default.DeskRequest,
            request =>
                OnDesk.Answer(
                    rooms.Current,
                    request.Id,
                    request.Edits,
                    desk => Answer(rooms.Current, desk, request.Paper ?? new PaperWish())
                )
        );

    private static IResult Answer(Workroom room, CandleDesk desk, PaperWish wish)
    {
        if (DeskPapers.Chosen(desk, wish.Edition) is not { } a)
        {
            return OnDesk.NotAssessed;
        }

        ListingUse use = wish.Kind == EnumName.Of(ListingUse.Advert) ? ListingUse.Advert : ListingUse.Shop;
        OfferedListings offered = OfferedListings.Of(a, room.Lawbook, use, onlyLanguage: null);
        return wish.Format switch
        {
            null => Endpoint.Json(
                new ListingAnswer([.. offered.Made.Select(ListingWriter.Report)], offered.Refused),
                PageJson.Default.ListingAnswer
            ),
            _ when offered.Made.Count == 0 => Endpoint.Refused(offered.Refused),
            "html" => Results.Text(string.Join('\n', offered.Made.Select(ListingWriter.Html)), "text/html; charset=utf-8"),
            "csv" => Results.Text(Csv.Write(ListingWriter.Columns, offered.Made.Select(ListingWriter.Row)), "text/csv; charset=utf-8"),
            _ => Results.Text(string.Join('\n', offered.Made.Select(ListingWriter.Text)), "text/plain; charset=utf-8"),
        };
    }
}
