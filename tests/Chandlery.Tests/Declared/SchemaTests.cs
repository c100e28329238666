using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Chandlery.Cli.Answers;
using Chandlery.Core.Declared.Reading;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Declared;

/// <summary>The schemas are what the readers read by.</summary>
public sealed class SchemaTests
{
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    // What a schema cannot know: sums, check digits, names of classes, fields compared with each other.
    private static readonly string[] BeyondShape =
    [
        "add up to",
        "check digit",
        "fails its check",
        "is no hazard",
        "hazard class",
        "is not a class",
        "is not a specific concentration limit",
        "is not a share",
        "is no share",
        "stands here twice",
        "side by side",
        "more than the",
        "larger than the label",
        "run off the page",
        "The labels overlap",
        "is no web address",
        "nothing but oil",
        "is not a day",
        "fragrance load is missing",
        "is said to be forgotten",
    ];

    [Fact]
    public void The_files_are_what_the_code_writes()
    {
        IReadOnlyDictionary<string, string> written = AnswerSchemas.AndAllOthers();
        Assert.Equal(written.Keys, Directory.GetFiles(Schema.Folder).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal));
        Assert.All(
            written,
            s => Assert.True(s.Value == File.ReadAllText(Path.Combine(Schema.Folder, s.Key)), "run: chandlery schemas --out data/schemas")
        );
    }

    public static TheoryData<string> Documents() =>
        [
            .. new[] { "demo", "example-stopped", "starter", "stocks" }
                .SelectMany(folder =>
                    Directory.EnumerateFiles(Path.Combine(TestLaw.Repository, "data", folder), "*.yaml", SearchOption.AllDirectories)
                )
                .Order(StringComparer.Ordinal)
                .Select(file => Path.GetRelativePath(TestLaw.Repository, file)),
        ];

    [Theory]
    [MemberData(nameof(Documents))]
    public void Every_shipped_document_is_accepted(string file)
    {
        using JsonDocument document = JsonDocument.Parse(YamlJson.Convert(File.ReadAllText(Path.Combine(TestLaw.Repository, file))));
        Schema.Fulfils(document.RootElement.GetProperty("declares").GetString()!, document.RootElement);
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void A_document_bent_anywhere_is_refused_by_the_schema_when_the_reader_refuses_its_shape(string file) =>
        Bend(YamlJson.Convert(File.ReadAllText(Path.Combine(TestLaw.Repository, file))));

    /// <summary>Documents in which every field stands.</summary>
    public static TheoryData<string> Whole() =>
        [
            """
                {"declares":"oil","name":"Tar","supplier":"Nobody","document":"SDS 1","revised":"2026-01-02","classes":["Skin Sens. 1B, H317"],
                 "ingredients":[{"name":"Linalool","cas":"78-70-6","ec":"201-134-4","share":"10 - <25 %","classes":["Skin Sens. 1B, H317"],
                  "limits":["Skin Sens. 1B, H317: C >= 1 %"],"m":{"acute":10,"chronic":1},"ate":{"oralMgPerKg":2790,"dermalMgPerKg":5610,"gasPpm":700,"vapourMgPerLitre":3,"dustMgPerLitre":2},
                  "constituents":[{"name":"Part","share":5,"m":10,"listedSeparately":true,"classes":"not classified"}]}],
                 "flashPoint":{"celsius":78,"method":"closed cup"},"densityGramsPerMl":0.9,"dropMilligrams":20,"highestLoad":{"percent":10,"of":"wax"},
                 "ifra":{"amendment":51,"date":"2026-01-02","limits":{"12":33.5,"4":"not restricted"}},"notDeclared":["the solvent"],
                 "draft":{"from":[{"file":"a.pdf","sha256":"0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef"}],"reviewed":{"by":"me","on":"2026-01-02"}}}
                """,
            """
                {"declares":"wax","name":"Mix","supplier":"Nobody","blend":[{"wax":"one","percent":60},{"wax":"two","percent":40}],
                 "highestLoad":{"percent":10,"of":"candle"},"solidDensityGramsPerMl":0.9,"liquidDensityGramsPerMl":0.8,"meltingCelsius":52}
                """,
            """
                {"declares":"maker","name":"Nobody","address":["One Road"],"telephone":"+353 1 555 0100","email":"a@maker.example",
                 "emergencyTelephone":"+353 1 555 0101","vat":{"country":"IE","number":"1234567T"}}
                """,
            """
                {"declares":"candle","name":"Tar","use":"indoor","vessel":"jar","netGrams":180,"wax":"soy","waxGrams":150,
                 "oils":[{"oil":"one","grams":5},{"oil":"two","millilitres":5},{"oil":"three","drops":50}],
                 "extras":[{"extra":"dye","percentOfWax":0.1},{"extra":"guard","grams":0.1}],"topUp":{"scented":"no","grams":10},
                 "wicks":{"count":2,"kind":"cotton","trimToMm":5},"headspaceMm":10,
                 "temperatures":{"meltCelsius":80,"addFragranceCelsius":70,"pourCelsius":60,"topUpCelsius":65},"soldIn":["IE"],"languages":["en"],
                 "label":{"shape":"ring","diameterMm":60,"holeMm":20},"batchCode":"A1","formulationNumber":7,"eMark":"yes","packaging":[{"part":"jar","material":"glass","grams":200,"mark":"GL 70"}],
                 "answers":{"looksLikeFood":"no","forChildren":"no","glitter":"no","metalCoreWick":"no","claims":["hand-poured"]},"onMarketSince":"2020-01-02",
                 "gtin":"4006381333931","informationUrl":"https://candles.example/tar"}
                """,
            """
                {"declares":"candle","name":"Tar","use":"indoor","vessel":"jar","netGrams":180,"wax":"soy","load":{"percent":8,"of":"wax"},
                 "oils":[{"oil":"one","share":100}],"topUp":{"scented":"no","percentOfCandle":10},
                 "wicks":{"count":1,"trimToMm":5},"soldIn":["IE"],"label":{"widthMm":74,"heightMm":105,"cornerMm":3}}
                """,
            """
                {"declares":"batch","candle":"tar","code":"A1","poured":"2026-01-02","made":12,"lots":["l1"],"weighed":{"waxGrams":4000,
                 "oils":[{"oil":"one","grams":5}],"extras":[{"extra":"dye","grams":1}],"topUp":{"scented":"no","grams":10}}}
                """,
            """
                {"declares":"lot","oil":"tar","code":"L1","bought":"2026-01-02","from":"Nobody","document":"DN 1","grams":500,"pieces":2}
                """,
            """
                {"declares":"dispatch","batch":"a1","on":"2026-01-02","pieces":6,"country":"IE","toWhom":"shop",
                 "receiver":{"name":"Shop","address":["One Road"],"email":"a@shop.example","telephone":"+353 1 555 0100"}}
                """,
            """{"declares":"dispatch","batch":"a1","on":"2026-01-02","pieces":6,"country":"IE","toWhom":"person","forgotten":"2031-02-03"}""",
            """
                {"declares":"incident","kind":"accident","candle":"tar","batch":"a1","country":"IE","known":"2026-01-02","happened":"It fell.",
                 "harm":"nothing","found":"a slope","done":[{"on":"2026-01-03","what":"asked"}],"reported":[{"on":"2026-01-03","clock":"danger","reference":"1"}],
                 "closed":"2026-01-04","person":{"name":"P","address":["One Road"]}}
                """,
            """
                {"declares":"test","candle":"tar","on":"2026-01-02","by":"me","vessel":"jar","wax":"soy","wicks":{"count":1,"kind":"cotton"},"oilPercent":6,
                 "roomCelsius":21,"samples":[{"name":"A","burns":[{"hours":4,"flameMm":30,"poolMm":60,"vesselCelsius":50,"soot":"little","relit":"no"}],
                 "fellOnSlope":"no","vesselWhole":"yes","wentOut":"yes"}],"limits":{"flameMm":40,"vesselCelsius":60,"soot":"little","slopeDegrees":10},
                 "photographs":["a.jpg"]}
                """,
            """{"declares":"weighing","batch":"a1","on":"2026-01-02","by":"me","tareGrams":10,"packages":[{"grams":100},{"grams":101}]}""",
            """
                {"declares":"maker","name":"Nobody","address":["One Road"],"telephone":"+353 1 555 0100","web":"https://maker.example","country":"GB",
                 "contactPoint":"https://maker.example/ask","madeFor":{"name":"House","address":["Two Road"],"country":"IE","telephone":"1","email":"a@b.example"},
                 "importers":[{"name":"In","address":["Three Road"],"country":"IE","web":"https://in.example"}],
                 "responsiblePersons":[{"name":"RP","address":["Four Road"],"country":"IE","email":"r@p.example","telephone":"2"}]}
                """,
            """
                {"declares":"trial","name":"One","on":"2026-01-02","oils":[{"oil":"a","drops":12},{"oil":"b","millilitres":0.5},{"oil":"c","grams":2}],
                 "smells":"green","stars":4,"wax":"soy","load":{"percent":6,"of":"wax"}}
                """,
            """
                {"declares":"vessel","name":"V","material":"glass","brimfulMl":300,"fillMl":280,
                 "inner":{"outlineMm":["0 0","100 0","100 60.5","0 60"],"heightMm":80},"outer":{"diameterMm":90,"heightMm":85},
                 "childResistant":"yes","tactileWarning":"no","confirmed":["brimfulMl"]}
                """,
            """
                {"declares":"candle","name":"Tar","use":"indoor","vessel":"jar","netGrams":180,"wax":"soy","load":{"percent":0.5,"of":"wax"},
                 "oils":[{"oil":"one","share":100}],"wicks":{"count":3,"trimToMm":5,"spacing":{"fromMm":30,"toMm":40}},"soldIn":["IE"],
                 "minutes":12,"confirmed":["load"]}
                """,
            """
                {"declares":"maker","name":"Nobody","address":["One Road"],"telephone":"+353 1 555 0100","email":"a@maker.example",
                 "rates":{"currency":"EUR","perHour":24,"marginPercent":40,"taxPercent":23},"confirmed":["telephone"]}
                """,
            """
                {"declares":"lot","packaging":"box","code":"L1","bought":"2026-01-02","from":"Nobody","pieces":20,"paid":12.5,"bestBefore":"2027-01-02"}
                """,
            """{"declares":"stock","name":"Roll","label":{"shape":"band","heightMm":40},"bleedMm":0,"roll":{"dotsPerInch":203}}""",
        ];

    [Theory]
    [MemberData(nameof(Whole))]
    public void A_whole_document_is_read_and_accepted_and_each_bend_is_refused_alike(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        Assert.Empty(Read(json));
        Schema.Fulfils(document.RootElement.GetProperty("declares").GetString()!, document.RootElement);
        Bend(json);
    }

    private static void Bend(string json)
    {
        string kind = JsonNode.Parse(json)!["declares"]!.GetValue<string>();
        var escaped = new List<string>();
        int refused = 0;
        foreach (string bent in Bent(json))
        {
            List<Problem> problems = [.. Read(bent).Where(p => !BeyondShape.Any(b => p.What.Contains(b, StringComparison.Ordinal)))];
            using JsonDocument document = JsonDocument.Parse(bent);
            if (problems.Count > 0)
            {
                refused++;
                if (Schema.Accepts(kind, document.RootElement))
                {
                    escaped.Add($"{problems[0]}\n    {bent}");
                }
            }
        }

        Assert.True(escaped.Count == 0, string.Join('\n', escaped));
        Assert.True(refused > 10, $"only {refused} bends were refused");
    }

    // JSON is YAML too.
    private static IReadOnlyList<Problem> Read(string json)
    {
        var problems = new Problems();
        if (JsonNode.Parse(json)!["declares"]?.ToString() == "stock")
        {
            StockReader.Read(json, "bent.yaml", "bent", problems);
        }
        else
        {
            new DeclarationReader(TestLaw.Lawbook.Vocabulary).Read(json, "bent.yaml", "bent", problems);
        }

        return problems.Found;
    }

    private static IEnumerable<string> Bent(string json)
    {
        string[] others = ["{}", "[]", "[[]]", "\"\"", "\"nonsense\"", "-7", "0", "0.5", "98765432101.5"];
        int places = Places(JsonNode.Parse(json)!).Count;
        for (int i = 0; i < places; i++)
        {
            foreach (string? other in others.Append(null))
            {
                JsonNode document = JsonNode.Parse(json)!;
                JsonNode place = Places(document)[i];
                if (NameOf(place) == "declares")
                {
                    continue;
                }

                if (other is not null)
                {
                    place.ReplaceWith(JsonNode.Parse(other));
                }
                else if (place.Parent is JsonObject map)
                {
                    map.Remove(place.GetPropertyName());
                }
                else
                {
                    ((JsonArray)place.Parent!).Remove(place);
                }

                yield return document.ToJsonString(Plain);
            }
        }

        int maps = Maps(JsonNode.Parse(json)!).Count;
        for (int i = 0; i < maps; i++)
        {
            JsonNode document = JsonNode.Parse(json)!;
            Maps(document)[i]["surplus"] = 1;
            yield return document.ToJsonString(Plain);
        }
    }

    private static string NameOf(JsonNode node) => node.Parent is JsonObject ? node.GetPropertyName() : "";

    private static List<JsonNode> Places(JsonNode node) =>
        node switch
        {
            JsonObject map => [.. map.SelectMany(e => Places(e.Value!).Prepend(e.Value!))],
            JsonArray list => [.. list.SelectMany(e => Places(e!).Prepend(e!))],
            _ => [],
        };

    private static List<JsonObject> Maps(JsonNode node) =>
        [.. Places(node).Prepend(node).OfType<JsonObject>().Where(m => NameOf(m) != "limits")];
}
