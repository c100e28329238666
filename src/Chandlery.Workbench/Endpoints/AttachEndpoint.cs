using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Forms;
using Chandlery.Workbench.Keeping;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>Puts a file that a declaration names beside it: a logo, a font, a photograph.</summary>
internal static class AttachEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        new(HttpMethods.Post, "/api/attach", context => Take(rooms.Current, context))
        {
            Largest = Attachments.Largest + Endpoint.LargestBody,
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
            return Endpoint.Refused($"The file is larger than {Attachments.Largest / 1_000_000} MB.");
        }

        string declares = form["declares"].ToString();
        if (form.Files is not [{ } file] || FormDesk.Lay(room, new FormRequest(declares, form["id"].ToString())) is not { } desk)
        {
            return Endpoint.Missing("There is nothing of that name in the folder.");
        }

        IReadOnlyList<string> endings = [.. EndingsOf(FormShapes.All[desk.Kind])];
        if (!endings.Contains(Path.GetExtension(file.FileName), StringComparer.OrdinalIgnoreCase))
        {
            return Endpoint.Refused($"The file's name must end in {string.Join(", ", endings)}.");
        }

        using var copy = new MemoryStream();
        await file.CopyToAsync(copy, context.RequestAborted);
        try
        {
            string folder = Path.GetDirectoryName(Path.Combine(room.Root, desk.File))!;
            string name = Attachments.Keep(folder, Path.GetFileName(file.FileName), copy.ToArray());
            return Endpoint.Json(new AttachedAnswer(name), PageJson.Default.AttachedAnswer);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Endpoint.Complaint(StatusCodes.Status500InternalServerError, error.Message);
        }
    }

    private static IEnumerable<string> EndingsOf(IReadOnlyList<FormField> fields) =>
        fields.SelectMany(f => f.Endings.Concat(EndingsOf(f.Fields))).Distinct();
}
