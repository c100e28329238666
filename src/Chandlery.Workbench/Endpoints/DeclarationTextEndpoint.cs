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
        if (!File.Exists(room.RegisterPath))
        {
            return Endpoint.Missing("Nothing was entered yet.");
        }

        using RegisterFile register = RegisterFile.OpenToRead(room.RegisterPath);
        return register.Declaration(hash) is { } text
            ? Results.Text(text, "application/yaml; charset=utf-8")
            : Endpoint.Missing("The register holds no such text.");
    }
}
