using System.Text.Json.Nodes;
using Chandlery.Files;
using Chandlery.Intake;
using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Paper.Drawing;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Forms;
using Chandlery.Workbench.Sheets;
using Chandlery.Yaml;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>A drafted oil beside its supplier's PDFs.</summary>
internal static class SheetEndpoint
{
    public static Endpoint Of(Rooms rooms) => Endpoint.Get("/api/sheet", query => Answer(rooms.Current, query["id"].ToString()));

    private static IResult Answer(Workroom room, string id)
    {
        if (
            DeclaredFile.Of(room.Folder(), "oil", id) is not { } file
            || TextFile.Read(Path.Combine(room.Root, file), file, new Problems()) is not { } yaml
        )
        {
            return Endpoint.Missing("There is no oil of that name in the folder.");
        }

        List<(string Name, string Hash)> sources =
        [
            .. (FormValues.Of(yaml)?["draft"]?["from"] as JsonArray ?? [])
                .OfType<JsonObject>()
                .Select(source => ($"{source["file"]}", $"{source["sha256"]}")),
        ];
        return Endpoint.Json(
            new SheetAnswer(
                [.. sources.Select(s => new SheetDocument(s.Name, Pages(SheetDesk.Pages(room, s.Hash) ?? [])))],
                DraftMarks.Places(yaml, [.. sources.Select(s => s.Name)]),
                DraftMarks.Doubts(yaml),
                DraftChecks.Contradictions(yaml, file, room.Lawbook, Workroom.Today)
            ),
            PageJson.Default.SheetAnswer
        );
    }

    private static IReadOnlyList<PreviewPage> Pages(IReadOnlyList<SheetPage> pages) =>
        [.. pages.Select(p => new PreviewPage(p.WidthMm, p.HeightMm, SvgDrawing.Draw(ReviewPages.Draw(p), $"{p.Number}")))];
}
