using System.Text.Json.Nodes;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Files;
using Chandlery.Workbench.Forms;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>The page's own words and the program's sentences in a language, and which languages there are.</summary>
internal static class WordsEndpoint
{
    private const string First = "en";

    // They travel inside the program, so they are the same as long as it runs.
    private static readonly Lazy<SortedDictionary<string, JsonObject>> Words = new(() => Of(ShippedFiles.PageWords()));
    private static readonly Lazy<SortedDictionary<string, JsonObject>> Told = new(() => Of(ShippedFiles.Told()));

    private static readonly Lazy<Dictionary<string, ToldSentences>> Telling = new(() =>
        Told.Value.ToDictionary(t => t.Key, t => Sentences(t.Value))
    );

    /// <summary>A sentence of the program's as a file for people has it: in the page's language, or in English where that does not tell it.</summary>
    public static string Said(string sentence, string language) =>
        Telling.Value.GetValueOrDefault(language)?.Find(sentence, FigureFormat.English) ?? sentence;

    // What is no sentence, such as the words for another product, stands in a table of its own.
    private static ToldSentences Sentences(JsonObject told) =>
        new(
            told.Where(s => s.Value is JsonValue).ToDictionary(s => s.Key, s => s.Value!.GetValue<string>()),
            new Dictionary<string, string>()
        );

    public static Endpoint Of(Rooms rooms) => Endpoint.Get("/api/words", query => Answer(rooms.Current, query["language"].ToString()));

    private static SortedDictionary<string, JsonObject> Of(IReadOnlyDictionary<string, string> files) =>
        new(files.ToDictionary(f => Path.GetFileNameWithoutExtension(f.Key), f => FormValues.Of(f.Value)!), StringComparer.Ordinal);

    private static IResult Answer(Workroom room, string language)
    {
        string chosen = Words.Value.ContainsKey(language) ? language : First;
        return Results.Text(
            new JsonObject
            {
                ["language"] = chosen,
                ["languages"] = new JsonObject(Words.Value.Select(w => KeyValuePair.Create(w.Key, w.Value["language"]?.DeepClone()))),
                ["words"] = Words.Value[chosen].DeepClone(),
                ["told"] = Told.Value.GetValueOrDefault(chosen)?.DeepClone() ?? new JsonObject(),
                ["statements"] = new JsonObject(Statements(room, chosen)),
                ["marks"] = new JsonObject(Marks(room, chosen)),
                ["nouns"] = new JsonArray([.. Nouns(room).Select(n => JsonValue.Create(n))]),
            }.ToJsonString(),
            "application/json; charset=utf-8"
        );
    }

    // What a class means, word for word as the law says it in the language.
    private static IEnumerable<KeyValuePair<string, JsonNode?>> Statements(Workroom room, string language) =>
        room.Lawbook.Languages.Find(language) is { } own
            ? own
                .Official.Keys.Union(own.Printed.Keys)
                .Where(code => !code.Text.StartsWith('P'))
                .Select(code => KeyValuePair.Create(code.Text, (JsonNode?)own.Statement(code)))
            : [];

    // What the law calls its signal words, by the word in English, and its pictograms, by their code.
    private static IEnumerable<KeyValuePair<string, JsonNode?>> Marks(Workroom room, string language)
    {
        Lawbook law = room.Lawbook;
        IEnumerable<KeyValuePair<string, JsonNode?>> words = law.Languages.Find(language) is { } own
            ? SignalWord.All.Select(w => KeyValuePair.Create(w.Text, (JsonNode?)own.Words[w.Key]))
            : [];
        IEnumerable<KeyValuePair<string, JsonNode?>> pictograms = law.Safety.Words.Find(language) is { } safety
            ? Pictogram.All.Select(p => KeyValuePair.Create(p.Code, (JsonNode?)safety.Words[p.Code]))
            : [];
        return words.Concat(pictograms);
    }

    // What stands in sentences in the stead of 'candle'.
    private static IEnumerable<string> Nouns(Workroom room) =>
        room.Lawbook.Kinds.SelectMany(k => k.Words.Written.Values).Distinct().Order(StringComparer.Ordinal);
}
