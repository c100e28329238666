using System.Net;
using Chandlery.Workbench.Endpoints;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Endpoint = Chandlery.Workbench.Endpoints.Endpoint;

namespace Chandlery.Workbench;

/// <summary>The workbench: a page on this machine alone.</summary>
public sealed class WorkbenchServer : IAsyncDisposable
{
    private readonly Entrance entrance = new();
    private readonly WebApplication application;
    private readonly Rooms rooms;

    private WorkbenchServer(WebApplication application, Rooms rooms)
    {
        this.application = application;
        this.rooms = rooms;
    }

    /// <summary>Address of the server, which lets nobody in by itself; there once it has started.</summary>
    public string Address => application.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();

    /// <summary>Address with the key that opens the page as long as the program runs.</summary>
    public string WayIn => With(entrance.Key);

    /// <summary>Address with a key that opens the page once, to start a browser with.</summary>
    public string WayInForOnce() => With(entrance.MakeKeyForOnce());

    private string With(string key) => $"{Address}/?{Entrance.Field}={key}";

    /// <summary>Starts the page.</summary>
    /// <param name="room">The opened folder.</param>
    /// <param name="port">Port on the loopback address; 0 for a free one.</param>
    /// <exception cref="IOException">The port is taken.</exception>
    public static async Task<WorkbenchServer> Start(Workroom room, int port)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = Endpoint.LargestBody;
            kestrel.Limits.MaxRequestHeadersTotalSize = 16_384;
            kestrel.Listen(IPAddress.Loopback, port);
        });
        WebApplication application = builder.Build();
        var server = new WorkbenchServer(application, new Rooms(room));
        application.Use(next => context => Guard.Check(context, server.entrance, next));
        foreach (Endpoint endpoint in EndpointList.Of(server.rooms))
        {
            application.MapMethods(endpoint.Path, [endpoint.Method], (RequestDelegate)(context => Answer(endpoint, context)));
        }

        await application.StartAsync();
        return server;
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
        await application.DisposeAsync();
        rooms.Dispose();
    }
}
