using System.Text.Json.Nodes;
using Chandlery.Files;
using Chandlery.Workbench.Forms;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>The page's own words: those of a language, over the English ones.</summary>
internal static class WordsEndpoint
{
    private const string First = "en";

    public static Endpoint Of() => Endpoint.Get("/api/words", query => Answer(query["language"].ToString()));

    private static IResult Answer(string language)
    {
        IReadOnlyDictionary<string, string> files = ShippedFiles.PageWords();
        List<string> codes = [.. files.Keys.Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];
        string chosen = codes.Contains(language) ? language : First;
        JsonObject words = FormValues.Of(files[$"{First}.yaml"])!;
        foreach ((string key, JsonNode? text) in FormValues.Of(files[$"{chosen}.yaml"])!)
        {
            words[key] = text?.DeepClone();
        }

        return Results.Text(
            new JsonObject
            {
                ["language"] = chosen,
                ["languages"] = new JsonObject(
                    codes.Select(c => KeyValuePair.Create(c, FormValues.Of(files[$"{c}.yaml"])!["language"]?.DeepClone()))
                ),
                ["words"] = words,
            }.ToJsonString(),
            "application/json; charset=utf-8"
        );
    }
}
