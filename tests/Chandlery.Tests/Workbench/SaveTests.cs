using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Chandlery.Tests.Support;
using Chandlery.Workbench;
using Chandlery.Yaml;

namespace Chandlery.Tests.Workbench;

/// <summary>Saves as the program takes them, without a browser.</summary>
public sealed class SaveTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-save-").FullName;

    public SaveTests()
    {
        foreach (string file in Directory.GetFiles(TestLaw.DemoFolder, "*.yaml", SearchOption.AllDirectories))
        {
            string copy = Path.Combine(folder, Path.GetRelativePath(TestLaw.DemoFolder, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string Tin => Path.Combine(folder, "candles", "slate-jar.yaml");

    [Fact]
    public async Task Of_two_saves_at_once_from_one_base_one_wins_and_the_other_is_told()
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(Tin, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        }

        await using WorkbenchServer server = await WorkbenchServer.Start(Workroom.Open(folder, new Problems())!, 0);
        using var client = new HttpClient { BaseAddress = new Uri(server.Address) };
        client.DefaultRequestHeaders.Add("X-Workbench", "1");
        await client.GetAsync(server.WayIn);
        for (int round = 0; round < 10; round++)
        {
            string hash = (
                await (await client.PostAsJsonAsync("/api/desk", new { id = "slate-jar" })).Content.ReadFromJsonAsync<JsonElement>()
            )
                .GetProperty("hash")
                .GetString()!;
            string[] loads = [$"{3 + (round % 2)}.25", $"{3 + (round % 2)}.75"];
            HttpResponseMessage[] answers = await Task.WhenAll(
                loads.Select(loadPercent =>
                    client.PostAsJsonAsync(
                        "/api/save",
                        new
                        {
                            id = "slate-jar",
                            hash,
                            edits = new { loadPercent },
                        }
                    )
                )
            );
            Assert.Equal([HttpStatusCode.OK, HttpStatusCode.Conflict], answers.Select(a => a.StatusCode).Order());
            int winner = Array.FindIndex(answers, a => a.StatusCode == HttpStatusCode.OK);
            Assert.Contains($"percent: {loads[winner]}", File.ReadAllText(Tin), StringComparison.Ordinal);
            Assert.Contains("changed on disk", await answers[1 - winner].Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }

        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Tin));
        }
    }
}
