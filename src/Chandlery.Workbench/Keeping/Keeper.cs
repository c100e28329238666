using Chandlery.Register;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Desks;
using Chandlery.Workbench.Forms;
using Chandlery.Yaml;
using Microsoft.AspNetCore.Http;
using Endpoint = Chandlery.Workbench.Endpoints.Endpoint;

namespace Chandlery.Workbench.Keeping;

/// <summary>Writes declarations to the folder, each as a change that can be taken back.</summary>
internal static class Keeper
{
    private const string ChangedOnDisk =
        "The file was changed on disk since you opened it. Nothing was saved. Load it again, with or without your changes.";

    /// <summary>Keeps a declaration with its edits.</summary>
    public static IResult Keep(Workroom room, FormRequest request)
    {
        lock (room.Writing)
        {
            bool isAssessed = request.Declares is "candle" or "batch";
            CandleDesk? desk = isAssessed ? CandleDesk.Lay(room, request, Workroom.Today) : null;
            FormDesk? form = isAssessed ? desk?.Form : FormDesk.Lay(room, request);
            if (form is null)
            {
                return Endpoint.Missing("There is nothing of that name in the folder.");
            }

            if (form.Hash != request.Hash)
            {
                return Endpoint.Complaint(StatusCodes.Status409Conflict, ChangedOnDisk);
            }

            IReadOnlyList<Problem> problems = desk?.Problems ?? form.Problems;
            if (problems.Count > 0 || form.Declared is null)
            {
                return Endpoint.Refused([
                    "Not kept, because of the problems shown.",
                    .. problems.Select(p => Shown.Beside(room, form, p).Text),
                ]);
            }

            if (form.Yaml != form.OnDisk)
            {
                room.History.Keep(request.What ?? $"{form.Id} changed", [new FileText(form.File, form.OnDisk, form.Yaml)]);
            }

            return Kept(room, form.Id, form.Yaml);
        }
    }

    /// <summary>Writes a whole text in place of a declaration's.</summary>
    /// <param name="room">The folder.</param>
    /// <param name="file">The file, below it.</param>
    /// <param name="text">The text; null to put the file away.</param>
    /// <param name="what">What was done, in words.</param>
    public static IResult Put(Workroom room, string file, string? text, string what)
    {
        lock (room.Writing)
        {
            string path = Path.Combine(room.Root, file);
            string? before = File.Exists(path) ? File.ReadAllText(path) : null;
            return Put(room, [new FileText(file, before, text)], what);
        }
    }

    /// <summary>Writes several files as one change, which is the first one's.</summary>
    /// <exception cref="IOException">A file is no longer what it was, or cannot be written; nothing is changed then.</exception>
    public static IResult Put(Workroom room, IReadOnlyList<FileText> texts, string what)
    {
        lock (room.Writing)
        {
            room.History.Keep(what, texts);
            return Kept(room, Path.GetFileNameWithoutExtension(texts[0].File), texts[0].After ?? "");
        }
    }

    /// <summary>Takes the last change back, or does it again.</summary>
    public static IResult Step(Workroom room, bool again)
    {
        lock (room.Writing)
        {
            return (again ? room.History.Redo() : room.History.Undo()) is { } change
                ? Kept(room, Path.GetFileNameWithoutExtension(change.Files[0].File), "")
                : Endpoint.Refused(again ? "There is nothing to do again." : "There is nothing to take back.");
        }
    }

    private static IResult Kept(Workroom room, string id, string text)
    {
        NextSteps next = room.History.Next();
        return Endpoint.Json(new KeptAnswer(id, RegisterFile.Sha256(text), next.Undo?.What, next.Redo?.What), PageJson.Default.KeptAnswer);
    }
}
