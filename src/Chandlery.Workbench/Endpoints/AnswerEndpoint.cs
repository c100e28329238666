using Chandlery.Register;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Forms;
using Chandlery.Workbench.Keeping;
using Chandlery.Workbench.Sheets;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>Keeps the maker's answers to a draft: values as corrected, without the marks of the doubts that are answered.</summary>
internal static class AnswerEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post("/api/sheet/answer", PageJson.Default.AnswerRequest, request => Answer(rooms.Current, request));

    // A draft may be wrong as a declaration while it is reviewed, so its answers are kept whatever else is amiss.
    private static IResult Answer(Workroom room, AnswerRequest request)
    {
        if (DeclaredFile.Of(room.Folder(), "oil", request.Id) is not { } file || !File.Exists(Path.Combine(room.Root, file)))
        {
            return Endpoint.Missing("There is no oil of that name in the folder.");
        }

        string text = File.ReadAllText(Path.Combine(room.Root, file));
        if (RegisterFile.Sha256(text) != request.Hash)
        {
            return Endpoint.Complaint(StatusCodes.Status409Conflict, "The draft was changed since you opened it. Load it again.");
        }

        try
        {
            string edited = FieldEdits.Apply(text, request.Edits);
            edited = (request.Answered ?? []).Aggregate(edited, DraftMarks.Without);
            return Keeper.Put(room, file, edited, $"{request.Id} reviewed");
        }
        catch (FormatException error)
        {
            return Endpoint.Refused(error.Message);
        }
    }
}
