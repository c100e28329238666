using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Forms;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>What the page changed so far, and what a declaration was at each time.</summary>
internal static class HistoryEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Get("/api/history", query => Answer(rooms.Current, query["declares"].ToString(), query["id"].ToString()));

    /// <summary>A text of the history.</summary>
    public static Endpoint Text(Rooms rooms) =>
        Endpoint.Get(
            "/api/history/text",
            query =>
                rooms.Current.History.Text(query["hash"].ToString()) is { } text
                    ? Results.Text(text, "application/yaml; charset=utf-8")
                    : Endpoint.Missing("There is no such text.")
        );

    private static IResult Answer(Workroom room, string kind, string id) =>
        Endpoint.Json(
            new HistoryAnswer(DeclaredFile.Of(room.Folder(), kind, id) is { } file ? room.History.Of(file) : [], room.History.PutAway()),
            PageJson.Default.HistoryAnswer
        );
}
