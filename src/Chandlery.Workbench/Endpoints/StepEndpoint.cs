using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Keeping;

namespace Chandlery.Workbench.Endpoints;

/// <summary>Takes the last change back, or does it again.</summary>
internal static class StepEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post("/api/step", PageJson.Default.StepRequest, request => Keeper.Step(rooms.Current, request.Again));
}
