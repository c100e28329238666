using Chandlery.Register;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>A declaration as it was when an entry of the register was made.</summary>
internal static class DeclarationTextEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Get("/api/register/declaration", query => Answer(rooms.Current, query["hash"].ToString()));

    private static IResult Answer(Workroom room, string hash)
    {
        if (!room.Register.Exists)
        {
            return Endpoint.Missing("Nothing was entered yet.");
        }

        using RegisterBook register = room.Register.OpenToRead();
        return register.Declaration(hash) is { } text
            ? Results.Text(text, "application/yaml; charset=utf-8")
            : Endpoint.Missing("The register holds no such text.");
    }
}
