using Chandlery.Workbench.Answers;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>Goes into the example, or back to the maker's own folder.</summary>
internal static class BeginEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post(
            "/api/begin",
            PageJson.Default.BeginRequest,
            request =>
            {
                if (request.Example)
                {
                    rooms.OpenExample();
                }
                else
                {
                    rooms.OpenOwn();
                }

                return Results.NoContent();
            }
        );
}
