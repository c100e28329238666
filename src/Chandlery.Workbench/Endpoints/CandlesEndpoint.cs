using Chandlery.Core.Asked.Comparisons;
using Chandlery.Files;
using Chandlery.Workbench.Answers;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>All candles and batches of the folder, assessed.</summary>
internal static class CandlesEndpoint
{
    public static Endpoint Of(Rooms rooms) => Endpoint.Get("/api/candles", _ => Answer(rooms.Current));

    private static IResult Answer(Workroom room)
    {
        DeclarationFolder folder = room.Folder();
        IReadOnlyList<CatalogueEntry<CatalogueRow>> entries = CatalogueRun.Assess(
            folder.Catalogue,
            room.Lawbook,
            Workroom.Today,
            null,
            CatalogueRow.Of
        );
        return Endpoint.Json(
            new CandlesAnswer(
                [.. entries.SelectMany(e => e.Results)],
                [
                    .. entries
                        .Where(e => e.Problems.Count > 0)
                        .Select(e => new WrongCandle(e.Id, string.Join(' ', e.Problems.Select(room.Shown)))),
                    .. folder
                        .Catalogue.Wrong.Where(w => w.Kind == "candle")
                        .Select(w => new WrongCandle(w.Id, room.Shown(folder.Problems.Found.First(p => p.Place.File == w.File)))),
                ]
            ),
            PageJson.Default.CandlesAnswer
        );
    }
}
