using System.Text.Json.Nodes;
using Chandlery.Files;
using Chandlery.Workbench.Forms;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>The page's own words in a language, and which languages there are.</summary>
internal static class WordsEndpoint
{
    private const string First = "en";

    // They travel inside the program, so they are the same as long as it runs.
    private static readonly Lazy<SortedDictionary<string, JsonObject>> Words = new(() =>
        new(
            ShippedFiles.PageWords().ToDictionary(f => Path.GetFileNameWithoutExtension(f.Key), f => FormValues.Of(f.Value)!),
            StringComparer.Ordinal
        )
    );

    public static Endpoint Of() => Endpoint.Get("/api/words", query => Answer(query["language"].ToString()));

    private static IResult Answer(string language)
    {
        string chosen = Words.Value.ContainsKey(language) ? language : First;
        return Results.Text(
            new JsonObject
            {
                ["language"] = chosen,
                ["languages"] = new JsonObject(Words.Value.Select(w => KeyValuePair.Create(w.Key, w.Value["language"]?.DeepClone()))),
                ["words"] = Words.Value[chosen].DeepClone(),
            }.ToJsonString(),
            "application/json; charset=utf-8"
        );
    }
}
