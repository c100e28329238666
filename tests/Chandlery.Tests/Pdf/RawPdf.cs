using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace Chandlery.Tests.Pdf;

/// <summary>
/// The objects of one of our PDFs as they stand in the file, object streams taken apart. It knows no more of PDF than it needs, so
/// that it shares nothing with the writer.
/// </summary>
internal sealed partial class RawPdf
{
    private readonly Dictionary<int, string> bodies = [];
    private readonly Dictionary<int, byte[]> streams = [];

    public RawPdf(byte[] pdf)
    {
        Text = Encoding.Latin1.GetString(pdf);
        foreach (Match match in ObjectStart().Matches(Text))
        {
            int number = int.Parse(match.Groups[1].Value);
            int end = Text.IndexOf("\nendobj\n", match.Index, StringComparison.Ordinal);
            string body = Text[(match.Index + match.Length)..end];
            Match stream = StreamStart().Match(body);
            if (stream.Success)
            {
                int start = match.Index + match.Length + stream.Index + stream.Length;
                byte[] data = pdf[start..(start + int.Parse(stream.Groups[1].Value))];
                body = body[..(stream.Index + stream.Groups[0].Value.IndexOf(">>", StringComparison.Ordinal) + 2)];
                streams[number] = body.Contains("/FlateDecode", StringComparison.Ordinal) ? Unpacked(data) : data;
            }

            bodies[number] = body;
        }

        foreach ((int number, string body) in bodies.Where(b => b.Value.Contains("/ObjStm", StringComparison.Ordinal)).ToList())
        {
            string data = Encoding.Latin1.GetString(streams[number]);
            int first = int.Parse(Regex.Match(body, "/First ([0-9]+)").Groups[1].Value);
            int[] head = [.. data[..first].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(int.Parse)];
            for (int i = 0; i < head.Length; i += 2)
            {
                int end = i + 3 < head.Length ? first + head[i + 3] : data.Length;
                bodies[head[i]] = data[(first + head[i + 1])..end].TrimEnd('\n');
            }
        }
    }

    /// <summary>The whole file, a character a byte.</summary>
    public string Text { get; }

    /// <summary>All objects without their streams.</summary>
    public IEnumerable<string> Bodies => bodies.Values;

    /// <summary>The catalog.</summary>
    public string Catalog => Single("/Type/Catalog");

    /// <summary>The information dictionary.</summary>
    public string Information => Body(int.Parse(Regex.Match(Text, "/Info ([0-9]+) 0 R").Groups[1].Value));

    /// <summary>The one object that holds all these words.</summary>
    public string Single(params string[] words) =>
        Assert.Single(bodies.Values, b => words.All(w => b.Contains(w, StringComparison.Ordinal)));

    /// <summary>All objects that hold these words.</summary>
    public IReadOnlyList<string> All(string words) => [.. bodies.Values.Where(b => b.Contains(words, StringComparison.Ordinal))];

    /// <summary>The object that an entry of another leads to.</summary>
    public string Follow(string body, string entry) => Body(NumberOf(body, entry));

    /// <summary>What the stream holds that an entry of an object leads to.</summary>
    public byte[] Stream(string body, string entry) => streams[NumberOf(body, entry)];

    /// <summary>A page's content, a character a byte.</summary>
    public string Content(int page = 0) => Encoding.Latin1.GetString(Stream(All("/Type/Page/")[page], "/Contents"));

    /// <summary>An object by its number.</summary>
    public string Body(int number) => bodies[number];

    private static int NumberOf(string body, string entry)
    {
        Match match = Regex.Match(body, $@"{Regex.Escape(entry)}\[? ?([0-9]+) 0 R");
        Assert.True(match.Success, $"{entry} leads nowhere in {body}");
        return int.Parse(match.Groups[1].Value);
    }

    private static byte[] Unpacked(byte[] data)
    {
        using var zlib = new ZLibStream(new MemoryStream(data), CompressionMode.Decompress);
        using var unpacked = new MemoryStream();
        zlib.CopyTo(unpacked);
        return unpacked.ToArray();
    }

    [GeneratedRegex(@"(?<=\n)([0-9]+) 0 obj\n")]
    private static partial Regex ObjectStart();

    [GeneratedRegex(@"/Length ([0-9]+)>>\nstream\n")]
    private static partial Regex StreamStart();
}
