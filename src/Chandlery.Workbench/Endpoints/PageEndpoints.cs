using System.Reflection;
using Chandlery.Paper.Fonts;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>The page itself: its markup, style, scripts and typeface.</summary>
internal static class PageEndpoints
{
    private const string Folder = "page/";

    private static readonly Dictionary<string, string> Types = new()
    {
        [".html"] = "text/html; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".ttf"] = "font/ttf",
    };

    private static readonly string[] Faces = ["Inter-Regular.ttf", "Inter-Bold.ttf"];

    public static IEnumerable<Endpoint> All() =>
        typeof(PageEndpoints)
            .Assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith(Folder, StringComparison.Ordinal))
            .Select(n =>
                Endpoint.Get(n == Folder + "workbench.html" ? "/" : $"/{n[Folder.Length..]}", _ => Read(typeof(PageEndpoints).Assembly, n))
            )
            .Concat(Faces.Select(f => Endpoint.Get($"/{f}", _ => Read(typeof(Face).Assembly, $"fonts/{f}"))));

    private static IResult Read(Assembly home, string name)
    {
        using Stream stream = home.GetManifestResourceStream(name)!;
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return Results.Bytes(copy.ToArray(), Types[Path.GetExtension(name)]);
    }
}
