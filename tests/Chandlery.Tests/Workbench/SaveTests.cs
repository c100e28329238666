using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Chandlery.Tests.Support;
using Chandlery.Workbench;
using Chandlery.Yaml;

namespace Chandlery.Tests.Workbench;

/// <summary>Changes as the program keeps them, without a browser.</summary>
public sealed class SaveTests : IAsyncLifetime, IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-save-").FullName;
    private readonly HttpClient client = new();
    private WorkbenchServer? server;

    public async Task InitializeAsync()
    {
        foreach (string file in Directory.GetFiles(TestLaw.DemoFolder, "*.yaml", SearchOption.AllDirectories))
        {
            string copy = Path.Combine(folder, Path.GetRelativePath(TestLaw.DemoFolder, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        server = await WorkbenchServer.Start(Workroom.Open(folder, new Problems())!, 0);
        client.BaseAddress = new Uri(server.Address);
        client.DefaultRequestHeaders.Add("X-Workbench", "1");
        await client.GetAsync(server.WayIn);
    }

    public void Dispose() => client.Dispose();

    public async Task DisposeAsync()
    {
        await server!.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }

    private string Jar => Path.Combine(folder, "candles", "slate-jar.yaml");

    private async Task<JsonElement> Ask(string path, object body) =>
        await (await client.PostAsJsonAsync(path, body)).Content.ReadFromJsonAsync<JsonElement>();

    private static object Edit(object value, params object[] path) => new { path, value };

    private async Task<string> Hash(string kind, string id) =>
        (await Ask("/api/form", new { declares = kind, id })).GetProperty("hash").GetString()!;

    private async Task<HttpResponseMessage> Keep(string kind, string id, string? hash, params object[] edits) =>
        await client.PostAsJsonAsync(
            "/api/keep",
            new
            {
                declares = kind,
                id,
                hash,
                edits,
            }
        );

    [Fact]
    public async Task Of_two_saves_at_once_from_one_base_one_wins_and_the_other_is_told()
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(Jar, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        }

        for (int round = 0; round < 10; round++)
        {
            string hash = await Hash("candle", "slate-jar");
            string[] loads = [$"{3 + (round % 2)}.25", $"{3 + (round % 2)}.75"];
            HttpResponseMessage[] answers = await Task.WhenAll(
                loads.Select(load => Keep("candle", "slate-jar", hash, Edit(load, "load", "percent")))
            );
            Assert.Equal([HttpStatusCode.OK, HttpStatusCode.Conflict], answers.Select(a => a.StatusCode).Order());
            int winner = Array.FindIndex(answers, a => a.StatusCode == HttpStatusCode.OK);
            Assert.Contains($"percent: {loads[winner]}", File.ReadAllText(Jar), StringComparison.Ordinal);
            Assert.Contains("changed on disk", await answers[1 - winner].Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }

        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Jar));
        }
    }

    [Fact]
    public async Task What_is_wrong_is_not_kept_and_is_told_beside_its_field()
    {
        string before = File.ReadAllText(Jar);
        HttpResponseMessage answer = await Keep("candle", "slate-jar", await Hash("candle", "slate-jar"), Edit("2,900", "netGrams"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal(before, File.ReadAllText(Jar));
        foreach (
            (object edit, string field) in new[]
            {
                (Edit("2,900", "netGrams"), "netGrams"),
                (Edit("nobody", "oils", 0, "oil"), "oils.0.oil"),
            }
        )
        {
            JsonElement desk = await Ask("/api/desk", new { id = "slate-jar", edits = new[] { edit } });
            Assert.Equal([field], desk.GetProperty("problems").EnumerateArray().Select(p => p.GetProperty("field").GetString()));
        }
    }

    [Fact]
    public async Task Every_change_can_be_taken_back_and_done_again_and_the_file_is_as_it_was()
    {
        string first = File.ReadAllText(Jar);
        await Keep("candle", "slate-jar", await Hash("candle", "slate-jar"), Edit("5", "load", "percent"));
        string second = File.ReadAllText(Jar);
        await Ask(
            "/api/file",
            new
            {
                @do = "copy",
                declares = "candle",
                id = "slate-jar",
                name = "Rainy Jar",
            }
        );
        string copy = Path.Combine(folder, "candles", "rainy-jar.yaml");
        Assert.Contains("name: Rainy Jar", File.ReadAllText(copy), StringComparison.Ordinal);
        Assert.DoesNotContain("gtin", File.ReadAllText(copy), StringComparison.Ordinal);
        await Ask(
            "/api/file",
            new
            {
                @do = "away",
                declares = "candle",
                id = "rainy-jar",
            }
        );
        Assert.False(File.Exists(copy));

        await Ask("/api/step", new { again = false });
        Assert.True(File.Exists(copy));
        await Ask("/api/step", new { again = false });
        Assert.False(File.Exists(copy));
        await Ask("/api/step", new { again = false });
        Assert.Equal(first, File.ReadAllText(Jar));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await client.PostAsJsonAsync("/api/step", new { again = false })).StatusCode);
        await Ask("/api/step", new { again = true });
        Assert.Equal(second, File.ReadAllText(Jar));

        // What somebody else wrote meanwhile is not overwritten by going back.
        File.AppendAllText(Jar, "# by hand\n");
        Assert.Equal(HttpStatusCode.InternalServerError, (await client.PostAsJsonAsync("/api/step", new { again = false })).StatusCode);
        Assert.Equal(second + "# by hand\n", File.ReadAllText(Jar));
    }

    [Fact]
    public async Task A_file_gets_another_name_wherever_it_is_named_and_takes_its_history_along()
    {
        string tin = Path.Combine(folder, "candles", "fig-tin.yaml");
        string before = File.ReadAllText(tin);
        string oil = File.ReadAllText(Path.Combine(folder, "oils", "fig-leaf.yaml"));
        await Keep("oil", "fig-leaf", await Hash("oil", "fig-leaf"), Edit("Fig Leaf anew", "name"));
        JsonElement called = await Ask("/api/file", Call("oil", "fig-leaf", "Green fig"));
        Assert.Equal("green-fig", called.GetProperty("id").GetString());
        Assert.False(File.Exists(Path.Combine(folder, "oils", "fig-leaf.yaml")));
        Assert.Equal(before.Replace("fig-leaf", "green-fig", StringComparison.Ordinal), File.ReadAllText(tin));
        Assert.DoesNotContain(
            Directory.EnumerateFiles(folder, "*.yaml", SearchOption.AllDirectories),
            f => File.ReadAllText(f).Contains(": fig-leaf", StringComparison.Ordinal)
        );

        JsonElement history = await client.GetFromJsonAsync<JsonElement>("/api/history?declares=oil&id=green-fig");
        Assert.Equal(2, history.GetProperty("texts").GetArrayLength());
        Assert.Empty(history.GetProperty("putAway").EnumerateArray());

        await Ask("/api/step", new { again = false });
        await Ask("/api/step", new { again = false });
        Assert.Equal(before, File.ReadAllText(tin));
        Assert.Equal(oil, File.ReadAllText(Path.Combine(folder, "oils", "fig-leaf.yaml")));
        Assert.False(File.Exists(Path.Combine(folder, "oils", "green-fig.yaml")));
    }

    [Fact]
    public async Task A_file_keeps_its_name_where_nobody_can_tell_what_names_it()
    {
        File.WriteAllText(Path.Combine(folder, "candles", "half.yaml"), "declares: candle\nname: Half\n");
        HttpResponseMessage answer = await client.PostAsJsonAsync("/api/file", Call("oil", "fig-leaf", "green-fig"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("half.yaml", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(folder, "oils", "fig-leaf.yaml")));
    }

    [Fact]
    public async Task What_the_register_knows_by_its_name_keeps_it()
    {
        JsonElement entered = await Ask("/api/enter", new { id = "hb-2611", by = "M. Hale" });
        Assert.Equal(1, entered.GetProperty("number").GetInt32());
        foreach ((string declares, string id) in new[] { ("batch", "hb-2611"), ("oil", "fig-leaf") })
        {
            HttpResponseMessage answer = await client.PostAsJsonAsync("/api/file", Call(declares, id, "another"));
            Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
            Assert.Contains("register", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }

        Assert.True(File.Exists(Path.Combine(folder, "oils", "fig-leaf.yaml")));
    }

    private static object Call(string declares, string id, string name) =>
        new
        {
            @do = "call",
            declares,
            id,
            name,
        };

    // CLP Annex III, H317, German and Spanish text: as in the act (data/languages, whose hashes StatementHashTests holds).
    [Theory]
    [InlineData("de", "Kann allergische Hautreaktionen verursachen.")]
    [InlineData("es", "Puede provocar una reacción alérgica en la piel.")]
    public async Task What_a_class_means_is_told_in_the_language_of_the_page(string language, string h317)
    {
        JsonElement words = await client.GetFromJsonAsync<JsonElement>($"/api/words?language={language}");
        Assert.Equal(h317, words.GetProperty("statements").GetProperty("H317").GetString());
    }

    [Fact]
    public async Task What_others_need_is_not_put_away()
    {
        HttpResponseMessage answer = await client.PostAsJsonAsync(
            "/api/file",
            new
            {
                @do = "away",
                declares = "oil",
                id = "fig-leaf",
            }
        );
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("Fig Tin", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(folder, "oils", "fig-leaf.yaml")));
    }

    [Fact]
    public async Task Comments_and_order_stay_whatever_kind_of_value_is_put()
    {
        string before = File.ReadAllText(Jar);
        object[] edits =
        [
            Edit(new { percent = "5", of = "wax" }, "load"),
            Edit(new { oil = "fig-leaf", share = "20" }, "oils", 1),
            Edit("80", "oils", 0, "share"),
            Edit(new[] { "IE" }, "soldIn"),
            Edit(new { scented = true }, "topUp"),
        ];
        HttpResponseMessage answer = await Keep("candle", "slate-jar", await Hash("candle", "slate-jar"), edits);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        string expected = before
            .Replace("load: { percent: 6, of: candle }", "load: { percent: 5, of: wax }", StringComparison.Ordinal)
            .Replace(
                "  - { oil: rain-on-slate, share: 100 }\n",
                "  - { oil: rain-on-slate, share: 80 }\n  - { oil: fig-leaf, share: 20 }\n",
                StringComparison.Ordinal
            )
            .Replace("soldIn: [IE, DE]", "soldIn: [IE]", StringComparison.Ordinal);
        Assert.Equal(expected + "topUp: { scented: yes }\n", File.ReadAllText(Jar));
    }

    [Theory]
    [InlineData("candle", "../maker")]
    [InlineData("passwd", "root")]
    [InlineData("oil", "/etc/passwd")]
    [InlineData("oil", ".history/x")]
    public async Task No_name_leads_out_of_its_folder(string kind, string id)
    {
        Assert.Equal(HttpStatusCode.NotFound, (await client.PostAsJsonAsync("/api/form", new { declares = kind, id })).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await Keep(kind, id, null, Edit("x", "name"))).StatusCode);
    }
}
