using Chandlery.Workbench.Desks;
using Chandlery.Workbench.Forms;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>Answers that are about a candle or batch of the folder.</summary>
internal static class OnDesk
{
    /// <summary>Why there is none.</summary>
    public static IResult Missing => Endpoint.Missing("There is no candle of that name in the folder.");

    /// <summary>Why nothing follows from a candle with problems.</summary>
    public static IResult NotAssessed => Endpoint.Refused("The candle cannot be assessed; see the problems.");

    /// <summary>Lays it on the desk and answers; a complaint when there is none of that name.</summary>
    public static IResult Answer(Workroom room, string? id, IReadOnlyList<FieldEdit>? edits, Func<CandleDesk, IResult> work) =>
        CandleDesk.Lay(room, id, edits, Workroom.Today) is { } desk ? work(desk) : Missing;
}
