using System.Text.Encodings.Web;
using System.Text.Json;
using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Core.Composed;
using Chandlery.Core.Quantities;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Desks;
using Chandlery.Workbench.Forms;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>A candle with its edits, and all that follows from them.</summary>
internal static class DeskEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post("/api/desk", PageJson.Default.DeskRequest, request => Answer(rooms.Current, request));

    private static IResult Answer(Workroom room, DeskRequest request) =>
        OnDesk.Answer(
            room,
            request.Id,
            request.Edits,
            desk => Endpoint.Json(Answer(room, desk, request.Paper ?? new PaperWish()), PageJson.Default.DeskAnswer)
        );

    private static DeskAnswer Answer(Workroom room, CandleDesk desk, PaperWish wish)
    {
        Assessment? first = desk.Assessments.Count > 0 ? desk.Assessments[0] : null;
        return new DeskAnswer
        {
            Declares = desk.Form.Kind,
            Id = desk.Form.Id,
            Hash = desk.Form.Hash,
            Values = FormValues.Tree(desk.Form.Map),
            Recipe = first is null ? null : [.. first.Composition.Recipe.Oils.Select(o => Line(o, first.Candle.NetMass))],
            Assessments = [.. desk.Assessments.Select(a => Told(room, a))],
            Papers = DeskPapers.Offer(room.Papers, desk.Assessments),
            Load = first is null ? null : LoadLine.Of(first, desk.WaxOf(first)),
            Wicks = first is null ? null : WickDrawing.Of(first),
            Preview = DeskPapers.Preview(room, desk, wish),
            Problems = [.. desk.Problems.Select(p => Shown.Beside(room, desk.Form, p))],
        };
    }

    // People know a file by its place below their folder.
    private static JsonElement Told(Workroom room, Assessment a)
    {
        string root = JsonEncodedText
            .Encode(room.Root + Path.DirectorySeparatorChar, JavaScriptEncoder.UnsafeRelaxedJsonEscaping)
            .ToString();
        return JsonElement.Parse(AssessmentJson.Write(a).Replace(root, "", StringComparison.Ordinal));
    }

    private static RecipeLine Line(OilShare share, Grams net)
    {
        double grams = share.Share.Value / 100 * net.Value;
        return new RecipeLine(
            share.Oil.Id,
            share.Oil.Name,
            share.ShareOfBlend.Value,
            share.Share.Value,
            grams,
            share.Oil.Density is { } density ? grams / density.Value : null,
            share.Oil.DropMass is { } drop ? grams / drop.Value : null
        );
    }
}
