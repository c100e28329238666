using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Keeping;

namespace Chandlery.Workbench.Endpoints;

/// <summary>Keeps a declaration with its edits.</summary>
internal static class KeepEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post("/api/keep", PageJson.Default.FormRequest, request => Keeper.Keep(rooms.Current, request));
}
