using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Forms;
using Chandlery.Workbench.Keeping;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>Puts a file that a declaration names beside it: a logo, a font, a photograph.</summary>
internal static class AttachEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Files(
            "/api/attach",
            Attachments.Largest,
            $"The file is larger than {Attachments.Largest / 1_000_000} MB.",
            (form, files) => Take(rooms.Current, new FormRequest(form["declares"].ToString(), form["id"].ToString()), files)
        );

    private static IResult Take(Workroom room, FormRequest of, IReadOnlyList<(string Name, byte[] Content)> files)
    {
        if (files is not [var (named, content)] || FormDesk.Lay(room, of) is not { } desk)
        {
            return Endpoint.Missing("There is nothing of that name in the folder.");
        }

        IReadOnlyList<string> endings = [.. EndingsOf(FormShapes.All[desk.Kind])];
        if (!endings.Contains(Path.GetExtension(named), StringComparer.OrdinalIgnoreCase))
        {
            return Endpoint.Refused($"The file's name must end in {string.Join(", ", endings)}.");
        }

        string folder = Path.GetDirectoryName(Path.Combine(room.Root, desk.File))!;
        return Endpoint.Json(new AttachedAnswer(Attachments.Keep(folder, named, content)), PageJson.Default.AttachedAnswer);
    }

    private static IEnumerable<string> EndingsOf(IReadOnlyList<FormField> fields) =>
        fields.SelectMany(f => f.Endings.Concat(EndingsOf(f.Fields))).Distinct();
}
