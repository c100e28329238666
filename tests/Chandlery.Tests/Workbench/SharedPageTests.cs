using System.Globalization;
using System.Net.Http.Json;
using System.Text.Json;
using Chandlery.Register;
using Chandlery.Tests.Support;
using Chandlery.Workbench;
using Chandlery.Yaml;

namespace Chandlery.Tests.Workbench;

/// <summary>The page over a register that several benches share: what it shows, enters, and says when the server is gone.</summary>
[Collection(OnPostgres.Name)]
public sealed class SharedPageTests(PostgresServer server) : IAsyncLifetime, IDisposable
{
    private readonly MakersFolder maker = new();
    private readonly PostgresTestStore store = new(server);
    private readonly HttpClient client = new();
    private WorkbenchServer? page;

    public async Task InitializeAsync()
    {
        store.Fill(maker.Path);
        store.In(maker.Path);
        page = await WorkbenchServer.Start(Workroom.Open(maker.Path, new Problems())!, 0);
        client.BaseAddress = new Uri(page.Address);
        client.DefaultRequestHeaders.Add("X-Workbench", "1");
        await client.GetAsync(page.WayIn);
    }

    public async Task DisposeAsync() => await page!.DisposeAsync();

    public void Dispose()
    {
        client.Dispose();
        maker.Dispose();
    }

    private async Task<JsonElement> Register(string query = "") => await client.GetFromJsonAsync<JsonElement>("/api/register" + query);

    private static long[] Numbers(JsonElement answer) =>
        [.. answer.GetProperty("entries").EnumerateArray().Select(e => e.GetProperty("number").GetInt64())];

    [Fact]
    public async Task It_shows_pages_finds_and_checks()
    {
        JsonElement first = await Register();
        Assert.Equal(TestRegisters.FilledCount, first.GetProperty("count").GetInt64());
        Assert.Equal(Enumerable.Range(201, 100).Reverse().Select(n => (long)n), Numbers(first));
        Assert.True(first.GetProperty("hasMore").GetBoolean());
        Assert.Empty(first.GetProperty("wrong").EnumerateArray());
        JsonElement before = await Register("?before=201");
        Assert.Equal(Enumerable.Range(101, 100).Reverse().Select(n => (long)n), Numbers(before));
        JsonElement found = await Register("?find=B-7");
        Assert.Equal([7L], Numbers(found));
        JsonElement all = await Register("?check=all");
        Assert.True(all.GetProperty("isChecked").GetBoolean());
        Assert.Empty(all.GetProperty("wrong").EnumerateArray());
        store.Tamper(maker.Path, "DROP TRIGGER entry_stays; UPDATE entry SET batch = 'X-1' WHERE number = 3");
        JsonElement tampered = await Register("?check=all");
        Assert.Contains(
            tampered.GetProperty("wrong").EnumerateArray(),
            w => w.GetString()!.StartsWith("entry 3:", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task It_enters_a_label_and_gives_table_and_copy()
    {
        HttpResponseMessage entered = await client.PostAsJsonAsync("/api/enter", new { id = "hb-2611", by = "M. Hale" });
        Assert.True(entered.IsSuccessStatusCode, await entered.Content.ReadAsStringAsync());
        JsonElement said = await entered.Content.ReadFromJsonAsync<JsonElement>();
        Assert.Equal(TestRegisters.FilledCount + 1, said.GetProperty("number").GetInt64());
        using (RegisterBook direct = store.In(maker.Path).OpenToRead())
        {
            Assert.Equal(said.GetProperty("hash").GetString(), direct.Head().Hash);
            Assert.Empty(direct.Verify());
        }

        string table = await client.GetStringAsync("/api/register/file");
        Assert.Equal(TestRegisters.FilledCount + 2, table.TrimEnd().Split('\n').Length);
        string copy = Path.Combine(maker.Path, "copy.sqlite");
        await File.WriteAllBytesAsync(copy, await client.GetByteArrayAsync("/api/register/file?as=copy"));
        using RegisterBook taken = RegisterFile.OpenToRead(copy);
        Assert.Equal(said.GetProperty("hash").GetString(), taken.Head().Hash);
    }

    [Fact]
    public async Task A_server_that_is_gone_is_said_and_nothing_else_breaks()
    {
        maker.Change(
            "maker.yaml",
            string.Create(CultureInfo.InvariantCulture, $"Port={server.Port}"),
            string.Create(CultureInfo.InvariantCulture, $"Port={PostgresServer.FreePort()}")
        );
        JsonElement answer = await Register();
        Assert.Empty(answer.GetProperty("entries").EnumerateArray());
        Assert.Contains(
            answer.GetProperty("wrong").EnumerateArray(),
            w => w.GetString()!.Contains("the server cannot be reached", StringComparison.Ordinal)
        );
        HttpResponseMessage entered = await client.PostAsJsonAsync("/api/enter", new { id = "hb-2611", by = "M. Hale" });
        Assert.Contains("the server cannot be reached", await entered.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }
}
