using System.Diagnostics;
using System.Net.WebSockets;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Chandlery.Tests.Support;

/// <summary>Debian's Firefox, driven by WebDriver BiDi, the W3C's protocol that it speaks itself.</summary>
internal sealed partial class Firefox : IAsyncDisposable
{
    public const string Tool = "firefox-esr";

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(90);

    private readonly string profile = Directory.CreateTempSubdirectory("chandlery-firefox-").FullName;
    private readonly ClientWebSocket socket = new();
    private readonly List<string> errors = [];
    private Process? process;
    private string context = "";
    private int asked;

    /// <summary>What was written to the console as an error.</summary>
    public IReadOnlyList<string> Errors => errors;

    public static async Task<Firefox> Open(int width, int height)
    {
        var firefox = new Firefox();
        await firefox.Start(width, height);
        return firefox;
    }

    private async Task Start(int width, int height)
    {
        process = Process.Start(
            new ProcessStartInfo(Tool, ["--headless", "--no-remote", "--remote-debugging-port", "0", "--profile", profile, "about:blank"])
            {
                RedirectStandardError = true,
                RedirectStandardOutput = true,
                Environment = { ["HOME"] = profile, ["MOZ_CRASHREPORTER_DISABLE"] = "1" },
            }
        )!;
        // What it says is read away, or it would stop at a full pipe.
        _ = process.StandardOutput.BaseStream.CopyToAsync(Stream.Null);
        using var patience = new CancellationTokenSource(Longest);
        string address = "";
        while (address.Length == 0)
        {
            string line =
                await process.StandardError.ReadLineAsync(patience.Token) ?? throw new InvalidOperationException("Firefox went away.");
            address = Listening().Match(line).Groups[1].Value;
        }

        _ = process.StandardError.BaseStream.CopyToAsync(Stream.Null);
        await socket.ConnectAsync(new Uri(address + "/session"), patience.Token);
        await Ask("session.new", new JsonObject { ["capabilities"] = new JsonObject() });
        await Ask("session.subscribe", new JsonObject { ["events"] = new JsonArray("log.entryAdded") });
        JsonNode tree = await Ask("browsingContext.getTree", []);
        context = tree["contexts"]![0]!["context"]!.GetValue<string>();
        await Ask(
            "browsingContext.setViewport",
            new JsonObject
            {
                ["context"] = context,
                ["viewport"] = new JsonObject { ["width"] = width, ["height"] = height },
            }
        );
    }

    public Task Go(string address) =>
        Ask(
            "browsingContext.navigate",
            new JsonObject
            {
                ["context"] = context,
                ["url"] = address,
                ["wait"] = "complete",
            }
        );

    /// <summary>The value of an expression, which may be a promise, as a text.</summary>
    public async Task<string> Value(string expression)
    {
        JsonNode answer = await Ask(
            "script.evaluate",
            new JsonObject
            {
                ["expression"] = $"(async () => String(await ({expression})))()",
                ["target"] = new JsonObject { ["context"] = context },
                ["awaitPromise"] = true,
            }
        );
        return answer["result"]?["value"]?.GetValue<string>() ?? throw new InvalidOperationException(answer.ToJsonString());
    }

    /// <summary>Waits until an expression holds.</summary>
    public async Task Until(string expression)
    {
        var waited = Stopwatch.StartNew();
        while (await Value(expression) != "true")
        {
            Assert.True(waited.Elapsed < Longest, $"never came: {expression}; {await Value("document.body.innerText.slice(0, 400)")}");
            await Task.Delay(100);
        }
    }

    /// <summary>Draws the pointer, pressed, from one point of the window to another.</summary>
    public Task Drag(int fromX, int fromY, int toX, int toY)
    {
        JsonObject Move(int x, int y) =>
            new JsonObject
            {
                ["type"] = "pointerMove",
                ["x"] = x,
                ["y"] = y,
                ["duration"] = 100,
            };
        return Ask(
            "input.performActions",
            new JsonObject
            {
                ["context"] = context,
                ["actions"] = new JsonArray(
                    new JsonObject
                    {
                        ["type"] = "pointer",
                        ["id"] = "mouse",
                        ["actions"] = new JsonArray(
                            Move(fromX, fromY),
                            new JsonObject { ["type"] = "pointerDown", ["button"] = 0 },
                            Move((fromX + toX) / 2, toY),
                            Move(toX, toY),
                            new JsonObject { ["type"] = "pointerUp", ["button"] = 0 }
                        ),
                    }
                ),
            }
        );
    }

    private async Task<JsonNode> Ask(string method, JsonObject parameters)
    {
        int id = ++asked;
        string question = new JsonObject
        {
            ["id"] = id,
            ["method"] = method,
            ["params"] = parameters,
        }.ToJsonString();
        using var patience = new CancellationTokenSource(Longest);
        await socket.SendAsync(Encoding.UTF8.GetBytes(question), WebSocketMessageType.Text, true, patience.Token);
        while (true)
        {
            JsonNode message = JsonNode.Parse(await Receive(patience.Token))!;
            if (message["method"]?.GetValue<string>() == "log.entryAdded" && message["params"]!["level"]!.GetValue<string>() == "error")
            {
                errors.Add(message["params"]!["text"]!.GetValue<string>());
            }
            else if (message["id"]?.GetValueKind() == JsonValueKind.Number && message["id"]!.GetValue<int>() == id)
            {
                return message["result"] ?? throw new InvalidOperationException(message.ToJsonString());
            }
        }
    }

    private async Task<byte[]> Receive(CancellationToken patience)
    {
        using var whole = new MemoryStream();
        byte[] part = new byte[65536];
        WebSocketReceiveResult received;
        do
        {
            received = await socket.ReceiveAsync(part, patience);
            whole.Write(part, 0, received.Count);
        } while (!received.EndOfMessage);
        return whole.ToArray();
    }

    public async ValueTask DisposeAsync()
    {
        socket.Dispose();
        if (process is not null)
        {
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
            process.Dispose();
        }

        Directory.Delete(profile, recursive: true);
    }

    [GeneratedRegex(@"WebDriver BiDi listening on (ws://\S+)")]
    private static partial Regex Listening();
}
