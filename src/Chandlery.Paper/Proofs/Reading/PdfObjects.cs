using System.IO.Compression;

namespace Chandlery.Paper.Proofs.Reading;

/// <summary>The objects of a PDF whose places stand in one cross-reference stream (ISO 32000-1, 7.5.7 and 7.5.8).</summary>
internal sealed class PdfObjects
{
    private const int InFile = 1;
    private const int InStream = 2;

    private readonly byte[] pdf;
    private readonly List<(int Kind, int Where, int Index)> places = [];
    private readonly Dictionary<int, (Dictionary<string, object> Entries, byte[] Data)> streams = [];

    /// <summary>Finds the objects.</summary>
    /// <exception cref="FormatException">The file is built otherwise.</exception>
    public PdfObjects(byte[] pdf)
    {
        this.pdf = pdf;
        int said = pdf.AsSpan().LastIndexOf("startxref"u8);
        if (said < 0)
        {
            throw new FormatException("the file does not say where its places stand");
        }

        var scanner = new PdfScanner(pdf, said);
        scanner.Next<PdfWord>();
        (Dictionary<string, object> entries, byte[] rows) = StreamAt((int)scanner.Next<double>());
        Trailer = entries;
        ReadPlaces(entries, rows);
    }

    /// <summary>The entries of the file's trailer.</summary>
    public Dictionary<string, object> Trailer { get; }

    /// <summary>What a dictionary has under a key, whether it stands there or is referred to.</summary>
    /// <exception cref="FormatException">It has nothing of that kind.</exception>
    public T Of<T>(Dictionary<string, object> dictionary, string key) =>
        dictionary.GetValueOrDefault(key) is { } value && Resolved(value) is T there
            ? there
            : throw new FormatException($"no {key} of the kind that is read here");

    /// <summary>The same, or null where there is nothing of that kind.</summary>
    public T? OrNull<T>(Dictionary<string, object> dictionary, string key)
        where T : class => dictionary.GetValueOrDefault(key) is { } value ? Resolved(value) as T : null;

    /// <summary>An object, or what a reference leads to.</summary>
    public object? Resolved(object value) => value is PdfReference reference ? ObjectOf(reference.Number) : value;

    /// <summary>The unpacked bytes of the stream that a dictionary refers to.</summary>
    /// <exception cref="FormatException">It refers to none.</exception>
    public byte[] Stream(Dictionary<string, object> dictionary, string key) =>
        dictionary.GetValueOrDefault(key) is PdfReference { Number: var number } && PlaceOf(number) is (InFile, var where, _)
            ? StreamAt(where).Data
            : throw new FormatException($"{key} refers to no stream");

    private (int Kind, int Where, int Index) PlaceOf(int number) =>
        number < places.Count ? places[number] : throw new FormatException($"there is no object {number}");

    private object? ObjectOf(int number)
    {
        (int kind, int where, int index) = PlaceOf(number);
        return kind switch
        {
            InFile => ValueAt(where).Next(),
            InStream => ObjectIn(where, index),
            _ => throw new FormatException($"object {number} is free"),
        };
    }

    private object? ObjectIn(int stream, int index)
    {
        if (!streams.TryGetValue(stream, out (Dictionary<string, object> Entries, byte[] Data) read))
        {
            streams[stream] = read = StreamAt(PlaceOf(stream).Where);
        }

        // At the head a number and a place for each object.
        var heads = new PdfScanner(read.Data);
        for (int i = 0; i < (2 * index) + 1; i++)
        {
            heads.Next<double>();
        }

        return new PdfScanner(read.Data, (int)Of<double>(read.Entries, "First") + (int)heads.Next<double>()).Next();
    }

    // Behind the number, the generation and "obj".
    private PdfScanner ValueAt(int where)
    {
        var scanner = new PdfScanner(pdf, where);
        scanner.Next<double>();
        scanner.Next<double>();
        scanner.Next<PdfWord>();
        return scanner;
    }

    private (Dictionary<string, object> Entries, byte[] Data) StreamAt(int where)
    {
        PdfScanner scanner = ValueAt(where);
        Dictionary<string, object> entries = scanner.Next<Dictionary<string, object>>();
        if (scanner.Next() is not PdfWord { Text: "stream" } || entries.GetValueOrDefault("Length") is not double length)
        {
            throw new FormatException("a stream is built otherwise than is read here");
        }

        byte[] data = pdf[(scanner.At + 1)..(scanner.At + 1 + (int)length)];
        return entries.GetValueOrDefault("Filter") switch
        {
            null => (entries, data),
            PdfName { Text: "FlateDecode" } => (entries, Unpacked(data)),
            _ => throw new FormatException("a stream is packed otherwise than is read here"),
        };
    }

    private static byte[] Unpacked(byte[] data)
    {
        using var zlib = new ZLibStream(new MemoryStream(data), CompressionMode.Decompress);
        using var whole = new MemoryStream();
        zlib.CopyTo(whole);
        return whole.ToArray();
    }

    // Rows of numbers of one, four and two bytes, each row as its difference from the one above (7.4.4.4).
    private void ReadPlaces(Dictionary<string, object> entries, byte[] rows)
    {
        if (entries.GetValueOrDefault("W") is not List<object> widths || widths is not [1.0, 4.0, 2.0])
        {
            throw new FormatException("the cross-reference stream is built otherwise than is read here");
        }

        const int width = 7;
        var row = new byte[width];
        for (int start = 0; start + width < rows.Length; start += width + 1)
        {
            if (rows[start] != 2)
            {
                throw new FormatException("a row of the cross-reference stream is no difference from the one above");
            }

            for (int i = 0; i < width; i++)
            {
                row[i] += rows[start + 1 + i];
            }

            int where = (row[1] << 24) | (row[2] << 16) | (row[3] << 8) | row[4];
            places.Add((row[0], where, (row[5] << 8) | row[6]));
        }
    }
}
