using System.Text;
using Chandlery.Yaml;

namespace Chandlery.Intake.Pages;

/// <summary>
/// Carries pages from one process to another, so that a hostile PDF can be read in a process whose time and memory
/// are bounded.
/// </summary>
public static class PageWire
{
    private const int Version = 3;

    /// <summary>Writes either the pages or the reason why there are none.</summary>
    public static void Write(Stream to, Parsed<IReadOnlyList<SheetPage>> read)
    {
        using var writer = new BinaryWriter(to, Encoding.UTF8, leaveOpen: true);
        writer.Write(Version);
        writer.Write(read.Reason ?? "");
        IReadOnlyList<SheetPage> pages = read.OrNull() ?? [];
        writer.Write(pages.Count);
        foreach (SheetPage page in pages)
        {
            writer.Write(page.Number);
            writer.Write(page.WidthMm);
            writer.Write(page.HeightMm);
            writer.Write(page.IsPicture);
            writer.Write(page.ValueDoubt ?? "");
            writer.Write(page.Doubts.Count);
            foreach (string doubt in page.Doubts)
            {
                writer.Write(doubt);
            }

            writer.Write(page.GoOnBeyondEdge.Count);
            foreach (Box line in page.GoOnBeyondEdge)
            {
                WriteBox(writer, line);
            }

            writer.Write(page.Words.Count);
            foreach (Word word in page.Words)
            {
                writer.Write(word.Text);
                WriteBox(writer, word.Box);
                writer.Write(word.TypeSize);
            }

            writer.Write(page.Rules.Count);
            foreach (RuledLine rule in page.Rules)
            {
                WriteBox(writer, rule.Box);
            }
        }
    }

    /// <summary>Reads what <see cref="Write"/> wrote.</summary>
    /// <exception cref="IOException">The other side stopped half-way.</exception>
    public static Parsed<IReadOnlyList<SheetPage>> Read(Stream from)
    {
        using var reader = new BinaryReader(from, Encoding.UTF8, leaveOpen: true);
        if (reader.ReadInt32() != Version)
        {
            throw new IOException("The two sides of the reader do not match.");
        }

        string why = reader.ReadString();
        int count = reader.ReadInt32();
        if (why.Length > 0)
        {
            return Parsed.Not<IReadOnlyList<SheetPage>>(why);
        }

        var pages = new List<SheetPage>();
        for (int i = 0; i < count; i++)
        {
            int number = reader.ReadInt32();
            double width = reader.ReadDouble();
            double height = reader.ReadDouble();
            bool isPicture = reader.ReadBoolean();
            string valueDoubt = reader.ReadString();
            List<string> doubts = [.. Repeat(reader, reader.ReadString)];
            List<Box> beyond = [.. Repeat(reader, () => ReadBox(reader))];
            List<Word> words = [.. Repeat(reader, () => new Word(reader.ReadString(), ReadBox(reader), reader.ReadDouble()))];
            List<RuledLine> rules = [.. Repeat(reader, () => new RuledLine(number, ReadBox(reader)))];
            pages.Add(
                new SheetPage(number, width, height, words, rules)
                {
                    Doubts = doubts,
                    ValueDoubt = valueDoubt.Length == 0 ? null : valueDoubt,
                    GoOnBeyondEdge = beyond,
                    IsPicture = isPicture,
                }
            );
        }

        return Parsed.As<IReadOnlyList<SheetPage>>(pages);
    }

    private static IEnumerable<T> Repeat<T>(BinaryReader reader, Func<T> read)
    {
        int count = reader.ReadInt32();
        for (int i = 0; i < count; i++)
        {
            yield return read();
        }
    }

    private static void WriteBox(BinaryWriter writer, Box box)
    {
        writer.Write(box.Left);
        writer.Write(box.Top);
        writer.Write(box.Right);
        writer.Write(box.Bottom);
    }

    private static Box ReadBox(BinaryReader reader) =>
        new(reader.ReadDouble(), reader.ReadDouble(), reader.ReadDouble(), reader.ReadDouble());
}
