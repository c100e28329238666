using Chandlery.Core.Assessed.Reports;
using Chandlery.Paper.Papers;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Desks;
using Chandlery.Yaml;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>A paper of a candle as a file.</summary>
internal static class PaperEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post("/api/paper", PageJson.Default.DeskRequest, request => Answer(rooms.Current, request));

    private static IResult Answer(Workroom room, DeskRequest request) =>
        OnDesk.Answer(room, request.Id, request.Edits, desk => Answer(room, desk, request.Paper ?? new PaperWish()));

    private static IResult Answer(Workroom room, CandleDesk desk, PaperWish wish)
    {
        switch (wish.Format)
        {
            case "yaml":
                return Results.Text(desk.Form.Yaml, "application/yaml; charset=utf-8");
            case "json":
                return Results.Text(AssessmentJson.Write(desk.Assessments), "application/json; charset=utf-8");
            case "zip":
                return Results.Bytes(AllPapers.Zip(room, desk), "application/zip");
            default:
                Parsed<MadePaper> made = DeskPapers.Made(room, desk, wish);
                if (!made.Success)
                {
                    return Endpoint.Refused(made.Reason);
                }

                (byte[] bytes, string type) = DeskPapers.Draw(made.Value.Document, wish.Format ?? "pdf");
                return Results.Bytes(bytes, type);
        }
    }
}
