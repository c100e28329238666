using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Register;
using Chandlery.Workbench.Forms;
using Chandlery.Yaml;
using Microsoft.AspNetCore.Http;
using Endpoint = Chandlery.Workbench.Endpoints.Endpoint;

namespace Chandlery.Workbench.Keeping;

/// <summary>Calls a declaration's file otherwise, and says so wherever it is named.</summary>
internal static class FileNaming
{
    /// <summary>
    /// Gives the file another name. What the register knows under the old one would no longer be found under the new: such a file keeps its
    /// name. So it does while a file of the folder is wrong, because nobody can tell what that one names.
    /// </summary>
    public static IResult Call(Workroom room, DeclarationFolder folder, FileRequest request, string file, string text)
    {
        if (folder.Catalogue.Wrong is [{ } wrong, ..])
        {
            string shown = Path.GetRelativePath(room.Root, wrong.File);
            return Endpoint.Refused($"Not renamed: {shown} has problems, so what it names cannot be followed. Mend it first.");
        }

        if (request.Name == request.Id)
        {
            return Endpoint.Refused("It is called so already.");
        }

        if (WhyKept(room.Register, request.Id) is { } why)
        {
            return Endpoint.Refused($"Not renamed: {why}");
        }

        string id = DeclaredFile.NewId(folder, request.Declares, request.Name!);
        try
        {
            string moved = $"{file[..(file.LastIndexOf('/') + 1)]}{id}.yaml";
            IEnumerable<FileText> users = folder
                .Catalogue.All.SelectMany(d => Users.ReferencesOf(d, request.Declares, request.Id))
                .DistinctBy(r => r.Place)
                .GroupBy(r => r.Place.File)
                .Select(own => Named(room, own, id));
            return Keeper.Put(
                room,
                [new FileText(moved, null, text), new FileText(file, text, null), .. users],
                $"file {request.Id} is now called {id}"
            );
        }
        catch (FormatException error)
        {
            return Endpoint.Refused($"Not renamed: {error.Message}");
        }
    }

    private static FileText Named(Workroom room, IGrouping<string, Reference> references, string id)
    {
        string before = File.ReadAllText(references.Key);
        string after = references
            .OrderByDescending(r => r.Place.Line)
            .ThenByDescending(r => r.Place.Column)
            .Aggregate(before, (text, r) => YamlEdit.SetAt(text, r.Place.Line, r.Place.Column, id));
        return new FileText(Path.GetRelativePath(room.Root, references.Key).Replace('\\', '/'), before, after);
    }

    private static string? WhyKept(RegisterPlace place, string id)
    {
        if (!place.Exists)
        {
            return null;
        }

        using RegisterBook register = place.OpenToRead();
        bool isDamaged = false;
        bool isKnown =
            Found(new RegisterQuery(Batch: id)).Any(e => e.Content.Subject == id)
            || Found(new RegisterQuery(Oil: id)).Any(e => e.Content.Oils.Any(o => o.Oil == id));
        return isKnown
                ? $"the register knows '{id}' under this name, and must find it again. What people read is the trade name, which you can change at any time."
            : isDamaged ? "the register has damaged entries, and nobody can tell what they name."
            : null;

        IEnumerable<RegisterEntry> Found(RegisterQuery query) => register.Stream(query, _ => isDamaged = true, RegisterStretch.All);
    }
}
