using Chandlery.Paper.Barcodes;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Scenes;
using Chandlery.Workbench.Answers;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>Lets a phone of the same network to the page, and shuts the door again.</summary>
internal static class PhoneEndpoint
{
    private const double SideMm = 40;

    // What is longer makes a code that a phone reads badly.
    private const int LongestAt = 200;

    public static Endpoint Of(PhoneDoor door, Entrance entrance) =>
        Endpoint.Post("/api/phone", PageJson.Default.PhoneRequest, request => Answer(door, entrance, request));

    private static async Task<IResult> Answer(PhoneDoor door, Entrance entrance, PhoneRequest request)
    {
        if (!request.Open)
        {
            await door.Shut();
            return Endpoint.Json(new PhoneAnswer(null, null), PageJson.Default.PhoneAnswer);
        }

        if (await door.Open() is not { } address)
        {
            return Endpoint.Refused("This computer is in no private network, so a phone cannot reach it.");
        }

        string at = request.At is { Length: > 1 and <= LongestAt } ? "#" + request.At : "";
        string way = $"{address}/?{Entrance.Field}={entrance.MakeKeyForOnce()}{at}";
        var code = new Scene(SideMm, SideMm, [CodeDrawing.Qr(way, 0, 0, SideMm)], []);
        return Endpoint.Json(new PhoneAnswer(way, SvgDrawing.Draw(code, way)), PageJson.Default.PhoneAnswer);
    }
}
