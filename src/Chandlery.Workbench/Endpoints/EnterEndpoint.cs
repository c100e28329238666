using Chandlery.Paper.Papers;
using Chandlery.Register;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Desks;
using Chandlery.Yaml;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>Enters a label in the register.</summary>
internal static class EnterEndpoint
{
    private const int LongestName = 100;

    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post("/api/enter", PageJson.Default.EnterRequest, request => Answer(rooms.Current, request));

    // What is entered is what is in the files: edits that are not kept cannot be entered.
    private static IResult Answer(Workroom room, EnterRequest request)
    {
        if (string.IsNullOrWhiteSpace(request.By) || request.By.Length > LongestName)
        {
            return Endpoint.Refused("Say who issues the label.");
        }

        if (CandleDesk.Lay(room, request.Id, null, Workroom.Today) is not { } desk)
        {
            return OnDesk.Missing;
        }

        if (DeskPapers.Chosen(desk, request.Edition) is not { StopsSale: false } a)
        {
            return Endpoint.Refused("Something stops the sale, so nothing was entered.");
        }

        var documents = new List<(string Name, byte[] Bytes)>();
        foreach (PaperKind paper in room.Papers.Registered)
        {
            switch (DeskPapers.Make(room, desk, a, paper, new PaperWish()))
            {
                case MissingPaper missing:
                    return Endpoint.Refused(DeskPapers.Sentence(paper, missing));
                case MadePaper made:
                    documents.Add(($"{paper.FileName(a, a.Languages[0])}.pdf", made.Pdf()));
                    break;
            }
        }

        var problems = new Problems();
        (RegisterContent content, IReadOnlyDictionary<string, string> texts) = RegisterWriter.Content(
            a,
            room.Root,
            desk.Catalogue,
            documents,
            problems
        );
        if (!problems.None)
        {
            return Endpoint.Refused([.. problems.Found.Select(room.Shown)]);
        }

        using RegisterBook register = room.Register.Open();
        IReadOnlyList<string> doubts = request.IsSure ? [] : register.Doubts(content);
        if (doubts.Count > 0)
        {
            return Endpoint.Complaint(StatusCodes.Status409Conflict, doubts);
        }

        RegisterEntry entry = register.Add(content, texts, request.By.Trim(), DateTimeOffset.UtcNow);
        return Endpoint.Json(new EnteredAnswer(entry.Number, entry.Hash), PageJson.Default.EnteredAnswer);
    }
}
