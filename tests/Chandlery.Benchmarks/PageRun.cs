using System.Diagnostics;
using System.Globalization;
using System.Net.Http.Headers;
using System.Text;
using Chandlery.Workbench;
using Chandlery.Yaml;

namespace Chandlery.Benchmarks;

/// <summary>What a keystroke on the local page takes: the program's whole answer, with the label, for a load that was not asked for before.</summary>
internal static class PageRun
{
    private const int WarmUps = 5;
    private const int Questions = 60;

    /// <summary>Measures and prints the median and the slowest.</summary>
    /// <param name="folder">The maker's folder.</param>
    /// <param name="candle">Name of the candle.</param>
    public static async Task Run(string folder, string candle)
    {
        Workroom room = Workroom.Open(folder, new Problems()) ?? throw new InvalidOperationException(folder);
        await using WorkbenchServer server = await WorkbenchServer.Start(room, 0);
        using var client = new HttpClient { BaseAddress = new Uri(server.Address) };
        client.DefaultRequestHeaders.Add("X-Workbench", "1");
        (await client.GetAsync(server.WayIn)).EnsureSuccessStatusCode();
        var milliseconds = new List<double>();
        for (int i = 0; i < WarmUps + Questions; i++)
        {
            string load = (5 + (i / 100.0)).ToString(CultureInfo.InvariantCulture);
            using var body = new StringContent(
                $$"""{"id":"{{candle}}","edits":[{"path":["load","percent"],"value":"{{load}}"}]}""",
                Encoding.UTF8,
                new MediaTypeHeaderValue("application/json")
            );
            long start = Stopwatch.GetTimestamp();
            HttpResponseMessage answer = await client.PostAsync("/api/desk", body);
            string text = await answer.EnsureSuccessStatusCode().Content.ReadAsStringAsync();
            milliseconds.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            if (!text.Contains("\"widthMm\":", StringComparison.Ordinal))
            {
                throw new InvalidOperationException("the answer holds no label");
            }
        }

        List<double> counted = [.. milliseconds.Skip(WarmUps).Order()];
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"page: a keystroke on {candle}: median {counted[Questions / 2]:0} ms, slowest {counted[^1]:0} ms"
            )
        );
    }
}
