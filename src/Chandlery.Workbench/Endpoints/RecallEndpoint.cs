using System.Text;
using Chandlery.Core.Declared;
using Chandlery.Core.SafetyFiles.Recalls;
using Chandlery.Files;
using Chandlery.Files.Recalls;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Desks;
using Chandlery.Yaml;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>Who has candles of a batch, of a lot, with an oil or a substance; and all that a recall sends out, as one file.</summary>
internal static class RecallEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post("/api/recall", PageJson.Default.RecallRequest, request => Answer(rooms.Current, request));

    private static IResult Answer(Workroom room, RecallRequest request)
    {
        Catalogue catalogue = room.Folder().Catalogue;
        if (
            EnumName.Find<RecallBy>(request.By) is not { } kind
            || new RecallFinder(catalogue).Find(new RecallQuery(kind, request.Text.Trim())) is not { } recall
        )
        {
            return Endpoint.Missing("Nothing of that name is declared.");
        }

        return request.Hazards is { } hazards
            ? Papers(room, catalogue, recall, hazards, request.Language)
            : Endpoint.Json(
                new RecallAnswer(
                    RecallReports.Of(recall),
                    [.. RecallPapers.Languages(recall, room.Lawbook).Select(l => new PaperLanguage(l.Code, l.Name))]
                ),
                PageJson.Default.RecallAnswer
            );
    }

    private static IResult Papers(Workroom room, Catalogue catalogue, RecallResult recall, IReadOnlyList<string> hazards, string language)
    {
        if (catalogue.OfKind<Maker>().FirstOrDefault() is not { } maker)
        {
            return Endpoint.Refused("No maker is declared in this folder.");
        }

        var problems = new Problems();
        var papers = new RecallPapers(new RecallGround(catalogue, room.Lawbook, room.Shop, Workroom.Today), problems);
        IReadOnlyList<PendingFile> files = SaidDangers.Read(recall, room.Lawbook, hazards, "", problems) is { } dangers
            ? papers.Make(recall, dangers, maker)
            : [];
        if (!problems.None)
        {
            return Endpoint.Refused([.. problems.Found.Select(p => $"{p.What} {p.Remedy}")]);
        }

        var first = new PendingFile(
            "read-this-first.txt",
            Encoding.UTF8.GetBytes(string.Concat(papers.Minds.Select(m => WordsEndpoint.Said(m, language) + "\n")))
        );
        return Results.Bytes(ZippedFiles.Of([first, .. files]), "application/zip");
    }
}
