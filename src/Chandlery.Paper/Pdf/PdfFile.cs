using System.Buffers.Binary;
using System.IO.Hashing;

namespace Chandlery.Paper.Pdf;

/// <summary>
/// The file that objects are written into, one behind the other (ISO 32000-1, 7.5). A packed file keeps objects that are no streams
/// in object streams and its places in a cross-reference stream; the other kind is what PDF 1.3 knows.
/// </summary>
internal sealed class PdfFile
{
    private const int ObjectsInStream = 200;
    private const int PlaceBytes = 7;

    // Behind the version: a comment that tells mail programs that this is no text (7.5.2).
    private static readonly byte[] Binary = [(byte)'%', 0xE2, 0xE3, 0xCF, 0xD3, (byte)'\n'];

    private readonly ByteText output = new();
    private readonly bool packed;
    private readonly List<(bool InStream, int Where, int Index)> places = [(false, 0, 0)];
    private readonly List<int> waiting = [];
    private readonly ByteText waitingBodies = new();
    private readonly ByteText waitingHeads = new();

    /// <summary>Starts a file.</summary>
    /// <param name="version">The version of PDF.</param>
    /// <param name="packed">Whether object streams are used.</param>
    public PdfFile(string version, bool packed)
    {
        this.packed = packed;
        output.Put($"%PDF-{version}\n").Put(Binary);
    }

    /// <summary>A number for an object that is added later.</summary>
    public int Reserve()
    {
        places.Add(default);
        return places.Count - 1;
    }

    /// <summary>Adds an object that is no stream and gives it its number.</summary>
    public int Add(ByteText body)
    {
        int number = Reserve();
        Add(number, body);
        return number;
    }

    /// <summary>Adds an object that is no stream.</summary>
    public void Add(int number, ByteText body)
    {
        if (!packed)
        {
            Begin(number);
            output.Put(body.Written).Put("\nendobj\n");
            return;
        }

        waiting.Add(number);
        waitingHeads.Put(number).Put(" ").Put(waitingBodies.Length).Put(" ");
        waitingBodies.Put(body.Written).Put("\n");
        if (waiting.Count == ObjectsInStream)
        {
            WriteWaiting();
        }
    }

    /// <summary>Adds a stream of bytes that are not packed yet, and gives it its number.</summary>
    /// <param name="entries">Its dictionary without length and filter.</param>
    /// <param name="data">The bytes.</param>
    public int AddPacking(string entries, ReadOnlySpan<byte> data) => AddStream(entries + "/Filter/FlateDecode", Deflater.Pack(data));

    /// <summary>Adds a stream as it is and gives it its number.</summary>
    /// <param name="entries">Its dictionary without length.</param>
    /// <param name="data">The bytes.</param>
    public int AddStream(string entries, ReadOnlySpan<byte> data)
    {
        int number = Reserve();
        AddStream(number, entries, data);
        return number;
    }

    /// <summary>Adds a stream as it is.</summary>
    public void AddStream(int number, string entries, ReadOnlySpan<byte> data)
    {
        Begin(number);
        output.Put("<<").Put(entries).Put("/Length ").Put(data.Length).Put(">>\nstream\n");
        output.Put(data).Put("\nendstream\nendobj\n");
    }

    /// <summary>Ends the file.</summary>
    /// <param name="trailer">Entries of the trailer: catalog and information.</param>
    /// <returns>The file's bytes.</returns>
    public byte[] Finish(string trailer)
    {
        if (packed)
        {
            WriteWaiting();
        }

        // The file's identifier comes from its contents (14.4), so that the same document gives the same bytes.
        string id = Convert.ToHexString(XxHash128.Hash(output.Written));
        string entries = $"{trailer}/ID[<{id}><{id}>]";
        int start;
        if (packed)
        {
            start = WritePlacesPacked(entries);
        }
        else
        {
            start = output.Length;
            WritePlaces(entries);
        }

        return output.Put("startxref\n").Put(start).Put("\n%%EOF\n").Written.ToArray();
    }

    private void Begin(int number)
    {
        places[number] = (false, output.Length, 0);
        output.Put(number).Put(" 0 obj\n");
    }

    private void WriteWaiting()
    {
        if (waiting.Count == 0)
        {
            return;
        }

        int stream = Reserve();
        for (int i = 0; i < waiting.Count; i++)
        {
            places[waiting[i]] = (true, stream, i);
        }

        byte[] data = Deflater.Pack(new ByteText().Put(waitingHeads.Written).Put(waitingBodies.Written).Written);
        AddStream(stream, $"/Type/ObjStm/N {waiting.Count}/First {waitingHeads.Length}/Filter/FlateDecode", data);
        waiting.Clear();
        waitingHeads.Clear();
        waitingBodies.Clear();
    }

    private void WritePlaces(string entries)
    {
        output.Put("xref\n0 ").Put(places.Count).Put("\n0000000000 65535 f \n");
        foreach ((bool _, int where, int _) in places.Skip(1))
        {
            output.Put($"{where:0000000000} 00000 n \n");
        }

        output.Put("trailer\n<<").Put(entries).Put("/Size ").Put(places.Count).Put(">>\n");
    }

    // Each row as its difference from the one above: places rise evenly, so the differences pack to little (7.4.4.4).
    private int WritePlacesPacked(string entries)
    {
        int number = Reserve();
        int start = output.Length;
        places[number] = (false, start, 0);
        var rows = new byte[places.Count * (PlaceBytes + 1)];
        Span<byte> above = stackalloc byte[PlaceBytes];
        Span<byte> row = stackalloc byte[PlaceBytes];
        for (int i = 0; i < places.Count; i++)
        {
            row.Clear();
            row[0] = (byte)(
                i == 0 ? 0
                : places[i].InStream ? 2
                : 1
            );
            BinaryPrimitives.WriteInt32BigEndian(row[1..], places[i].Where);
            BinaryPrimitives.WriteUInt16BigEndian(row[5..], i == 0 ? ushort.MaxValue : (ushort)places[i].Index);
            int at = i * (PlaceBytes + 1);
            rows[at] = 2;
            for (int k = 0; k < PlaceBytes; k++)
            {
                rows[at + 1 + k] = (byte)(row[k] - above[k]);
            }

            row.CopyTo(above);
        }

        AddStream(
            number,
            $"/Type/XRef/Size {places.Count}/W[1 4 2]{entries}/Filter/FlateDecode/DecodeParms<</Predictor 12/Columns {PlaceBytes}>>",
            Deflater.Pack(rows)
        );
        return start;
    }
}
