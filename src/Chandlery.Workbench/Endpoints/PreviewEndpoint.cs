using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Desks;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>A paper of a candle, to look at.</summary>
internal static class PreviewEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post("/api/preview", PageJson.Default.DeskRequest, request => Answer(rooms.Current, request));

    private static IResult Answer(Workroom room, DeskRequest request) =>
        OnDesk.Answer(
            room,
            request.Id,
            request.Edits,
            desk => Endpoint.Json(DeskPapers.Preview(room, desk, request.Paper ?? new PaperWish()), PageJson.Default.PreviewAnswer)
        );
}
