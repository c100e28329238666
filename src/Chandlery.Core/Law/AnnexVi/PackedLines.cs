using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace Chandlery.Core.Law.AnnexVi;

/// <summary>
/// The program's own table, packed when the program is built (<c>AnnexVi.targets</c>): pages of a few entries, each compressed by
/// itself, and a sorted list of numbers with the page that each stands on. Looking up a number unpacks one page of some kilobytes;
/// nothing is read until somebody asks.
/// </summary>
/// <remarks>
/// Layout, little-endian: count of pages (int32), count of numbers (int32), where each page ends behind the lists (int32 each), the
/// numbers in ascending order (int64 each: the figures without hyphens), the page of each number (uint16 each), the pages.
/// </remarks>
internal sealed class PackedLines : AnnexLines
{
    private const string Resource = "annex-vi.pack";

    private readonly byte[] pack;
    private readonly int pages;
    private readonly int numbers;

    private PackedLines(byte[] pack)
    {
        this.pack = pack;
        pages = Int32(0);
        numbers = Int32(4);
    }

    private const int PageEnds = 2 * sizeof(int);

    private int Numbers => PageEnds + (4 * pages);

    private int PagesOfNumbers => Numbers + (8 * numbers);

    private int FirstPage => PagesOfNumbers + (2 * numbers);

    /// <summary>The table that travels inside the program.</summary>
    public static PackedLines Shipped()
    {
        using Stream stream = typeof(PackedLines).Assembly.GetManifestResourceStream(Resource)!;
        byte[] pack = new byte[stream.Length];
        stream.ReadExactly(pack);
        return new PackedLines(pack);
    }

    public override IEnumerable<string> Near(string number)
    {
        long wanted = long.Parse(number.Replace("-", "", StringComparison.Ordinal), System.Globalization.CultureInfo.InvariantCulture);
        int low = 0;
        int high = numbers;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (NumberAt(middle) < wanted)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        for (; low < numbers && NumberAt(low) == wanted; low++)
        {
            foreach (string line in Page(BinaryPrimitives.ReadUInt16LittleEndian(pack.AsSpan(PagesOfNumbers + (2 * low)))))
            {
                yield return line;
            }
        }
    }

    public override IEnumerable<string> All() => Enumerable.Range(0, pages).SelectMany(Page);

    private string[] Page(int page)
    {
        int from = FirstPage + (page == 0 ? 0 : Int32(PageEnds + (4 * (page - 1))));
        int until = FirstPage + Int32(PageEnds + (4 * page));
        using var bytes = new MemoryStream(pack, from, until - from);
        using var unpacked = new DeflateStream(bytes, CompressionMode.Decompress);
        using var reader = new StreamReader(unpacked, Encoding.UTF8);
        return reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private long NumberAt(int i) => BinaryPrimitives.ReadInt64LittleEndian(pack.AsSpan(Numbers + (8 * i)));

    private int Int32(int at) => BinaryPrimitives.ReadInt32LittleEndian(pack.AsSpan(at));
}
