using System.Net;
using Chandlery.Workbench.Endpoints;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Endpoint = Chandlery.Workbench.Endpoints.Endpoint;

namespace Chandlery.Workbench;

/// <summary>The workbench: a page on this machine, and on a phone of the same network once the maker lets it in.</summary>
public sealed class WorkbenchServer : IAsyncDisposable
{
    private readonly Entrance entrance = new();
    private readonly Rooms rooms;
    private readonly PhoneDoor door;
    private readonly IReadOnlyList<Endpoint> endpoints;
    private WebApplication application = null!;

    private WorkbenchServer(Rooms rooms, Func<IPAddress?> nearby)
    {
        this.rooms = rooms;
        door = new PhoneDoor(nearby, address => Listen(address, 0));
        endpoints = EndpointList.Of(rooms, door, entrance);
    }

    /// <summary>Address of the server, which lets nobody in by itself; there once it has started.</summary>
    public string Address => application.Urls.First();

    /// <summary>Address with the key that opens the page as long as the program runs.</summary>
    public string WayIn => With(entrance.Key);

    /// <summary>Address with a key that opens the page once, to start a browser with.</summary>
    public string WayInForOnce() => With(entrance.MakeKeyForOnce());

    private string With(string key) => $"{Address}/?{Entrance.Field}={key}";

    /// <summary>Starts the page.</summary>
    /// <param name="room">The opened folder.</param>
    /// <param name="port">Port on the loopback address; 0 for a free one.</param>
    /// <exception cref="IOException">The port is taken.</exception>
    public static Task<WorkbenchServer> Start(Workroom room, int port) => Start(room, port, NearbyAddress.Find);

    /// <summary>Starts the page, with another way to find where a phone reaches the machine.</summary>
    internal static async Task<WorkbenchServer> Start(Workroom room, int port, Func<IPAddress?> nearby)
    {
        var server = new WorkbenchServer(new Rooms(room), nearby);
        server.application = await server.Listen(IPAddress.Loopback, port);
        return server;
    }

    private async Task<WebApplication> Listen(IPAddress address, int port)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = Endpoint.LargestBody;
            kestrel.Limits.MaxRequestHeadersTotalSize = 16_384;
            kestrel.Listen(address, port);
        });
        WebApplication listening = builder.Build();
        listening.Use(next => context => Guard.Check(context, entrance, next));
        foreach (Endpoint endpoint in endpoints)
        {
            listening.MapMethods(endpoint.Path, [endpoint.Method], (RequestDelegate)(context => Answer(endpoint, context)));
        }

        await listening.StartAsync();
        return listening;
    }

    private static async Task Answer(Endpoint endpoint, HttpContext context)
    {
        context.Features.Get<IHttpMaxRequestBodySizeFeature>()!.MaxRequestBodySize = endpoint.Largest;
        IResult result = await endpoint.Answer(context);
        await result.ExecuteAsync(context);
    }

    /// <summary>Runs until the user stops the program.</summary>
    public Task WaitForShutdown() => application.WaitForShutdownAsync();

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await door.DisposeAsync();
        await application.DisposeAsync();
        rooms.Dispose();
    }
}
