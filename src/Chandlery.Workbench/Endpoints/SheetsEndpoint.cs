using Chandlery.Intake.Pages;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Sheets;
using Chandlery.Yaml;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>Takes the PDFs of one oil in and drafts its declaration.</summary>
internal static class SheetsEndpoint
{
    private const int MostFiles = 6;

    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Files(
            "/api/sheets",
            PdfWords.LargestBytes,
            $"The files cannot be taken: together they may have {PdfWords.LargestBytes / 1_000_000} MB.",
            (_, files) => Take(rooms.Current, files)
        );

    private static IResult Take(Workroom room, IReadOnlyList<(string Name, byte[] Content)> files)
    {
        if (files.Count is 0 or > MostFiles)
        {
            return Endpoint.Refused(
                $"Drop the papers of one oil at a time: its safety data sheet, and its certificates, {MostFiles} files at most."
            );
        }

        Parsed<string> id = SheetDesk.Draft(room, files);
        return id.Success ? Endpoint.Json(new DraftedAnswer(id.Value), PageJson.Default.DraftedAnswer) : Endpoint.Refused(id.Reason);
    }
}
