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
        new(HttpMethods.Post, "/api/sheets", context => Take(rooms.Current, context))
        {
            Largest = PdfWords.LargestBytes + Endpoint.LargestBody,
        };

    private static async Task<IResult> Take(Workroom room, HttpContext context)
    {
        IFormCollection form;
        try
        {
            form = await context.Request.ReadFormAsync(context.RequestAborted);
        }
        catch (Exception error) when (error is InvalidDataException or InvalidOperationException or BadHttpRequestException)
        {
            return Endpoint.Refused($"The files cannot be taken: together they may have {PdfWords.LargestBytes / 1_000_000} MB.");
        }

        if (form.Files.Count is 0 or > MostFiles)
        {
            return Endpoint.Refused(
                $"Drop the papers of one oil at a time: its safety data sheet, and its certificates, {MostFiles} files at most."
            );
        }

        var files = new List<(string Name, byte[] Content)>();
        foreach (IFormFile file in form.Files)
        {
            using var copy = new MemoryStream();
            await file.CopyToAsync(copy, context.RequestAborted);
            files.Add((Path.GetFileName(file.FileName), copy.ToArray()));
        }

        try
        {
            Parsed<string> id = SheetDesk.Draft(room, files);
            return id.Success ? Endpoint.Json(new DraftedAnswer(id.Value), PageJson.Default.DraftedAnswer) : Endpoint.Refused(id.Reason);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Endpoint.Complaint(StatusCodes.Status500InternalServerError, error.Message);
        }
    }
}
