using System.Net;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Primitives;

namespace Chandlery.Workbench;

/// <summary>
/// Lets only the page itself talk to the program: pages of other origins, names that merely point at this machine, and whoever was
/// not given a key are refused.
/// </summary>
internal static class Guard
{
    /// <summary>A header that no other page can send without asking first, which is then refused.</summary>
    public const string Header = "X-Workbench";

    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    public static async Task Check(HttpContext context, Entrance entrance, RequestDelegate next)
    {
        IHeaderDictionary headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers.CacheControl = "no-store";
        string? why = Refusal(context);
        if (why is null && Offered(context) is { } key && entrance.Admit(context, key))
        {
            // The key does not stay in the address bar.
            context.Response.StatusCode = StatusCodes.Status303SeeOther;
            headers.Location = "/";
            return;
        }

        why ??= entrance.Knows(context) ? null : "Open the address that the program printed: it carries the key to this workbench.";
        if (why is null)
        {
            await next(context);
            return;
        }

        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        context.Response.ContentType = "text/plain; charset=utf-8";
        await context.Response.WriteAsync(why);
    }

    private static string? Offered(HttpContext context) =>
        HttpMethods.IsGet(context.Request.Method)
        && context.Request.Path == "/"
        && context.Request.Query.TryGetValue(Entrance.Field, out StringValues key)
            ? key.ToString()
            : null;

    // A name that was made to point here is not the page's own, whoever asks for it: only the address itself is.
    private static bool IsOwn(string host, IPAddress? reached) =>
        host == reached?.ToString() || (host == "localhost" && Equals(reached, IPAddress.Loopback));

    private static string? Refusal(HttpContext context)
    {
        HostString host = context.Request.Host;
        if (!IsOwn(host.Host, context.Connection.LocalIpAddress) || host.Port != context.Connection.LocalPort)
        {
            return "This address is not the workbench's own.";
        }

        string origin = context.Request.Headers.Origin.ToString();
        if (origin.Length > 0 && origin != $"http://{host}")
        {
            return "Another page may not use the workbench.";
        }

        bool changes = !HttpMethods.IsGet(context.Request.Method) && !HttpMethods.IsHead(context.Request.Method);
        return changes && context.Request.Headers[Header] != "1" ? "Only the workbench's own page may ask for this." : null;
    }
}
