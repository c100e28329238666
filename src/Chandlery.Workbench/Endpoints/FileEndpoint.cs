using Chandlery.Files;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Forms;
using Chandlery.Workbench.Keeping;
using Chandlery.Yaml;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>Copies a declaration, calls its file otherwise, puts it away, brings it back, or puts an earlier text in its place.</summary>
internal static class FileEndpoint
{
    // What belongs to one composition, one batch or one article alone.
    private static readonly string[] NotCopied = ["formulationNumber", "batchCode", "gtin", "onMarketSince"];

    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post("/api/file", PageJson.Default.FileRequest, request => Answer(rooms.Current, request));

    private static IResult Answer(Workroom room, FileRequest request)
    {
        DeclarationFolder folder = room.Folder();
        if (DeclaredFile.Of(folder, request.Declares, request.Id) is not { } file)
        {
            return Endpoint.Missing("There is nothing of that name in the folder.");
        }

        string path = Path.Combine(room.Root, file);
        string? text = File.Exists(path) ? File.ReadAllText(path) : null;
        return (request.Do, text) switch
        {
            ("copy", { } original) when request.Name is { Length: > 0 and <= 200 } name => Copy(room, folder, request, original, name),
            ("call", { } original) when request.Name is { Length: > 0 and <= 200 } name && DeclaredFile.IsNamed(request.Declares) =>
                FileNaming.Call(room, folder, request with { Name = name }, file, original),
            ("away", not null) when Users.Of(folder.Catalogue, request.Declares, request.Id).ToList() is { Count: > 0 } users =>
                Endpoint.Refused($"Not put away: {string.Join(", ", users)} need it."),
            ("away", not null) => Keeper.Put(room, file, null, $"{request.Id} put away"),
            ("back", null) or ("text", _) when request.Hash is { } hash && room.History.Text(hash) is { } kept => Keeper.Put(
                room,
                file,
                kept,
                request.Do == "back" ? $"{request.Id} brought back" : $"{request.Id} as it was"
            ),
            _ => Endpoint.Refused("That cannot be done with this file."),
        };
    }

    private static IResult Copy(Workroom room, DeclarationFolder folder, FileRequest request, string text, string name)
    {
        try
        {
            string copy = YamlEdit.Put(text, ["name"], YamlEdit.Scalar(name));
            foreach (string field in NotCopied.Where(f => FormValues.Of(copy)?.ContainsKey(f) == true))
            {
                copy = YamlEdit.Remove(copy, [field]);
            }

            string id = DeclaredFile.NewId(folder, request.Declares, name);
            return Keeper.Put(room, DeclaredFile.Of(folder, request.Declares, id)!, copy, $"{id} copied from {request.Id}");
        }
        catch (FormatException error)
        {
            return Endpoint.Refused(error.Message);
        }
    }
}
