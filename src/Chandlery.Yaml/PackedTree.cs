using System.Text;

namespace Chandlery.Yaml;

/// <summary>
/// A tree as it travels in the program, written by <c>PackedTrees.targets</c>: parsing the law's YAML takes ten times as long as
/// reading what came of it. All numbers are packed in seven bits a byte. First the number of different texts and the texts; then the
/// tree from its root: a byte for the kind, line and column, and for a scalar the number of its text, for a list the number of its
/// items and the items, for a map the number of its fields and for each the number of its key's text, line, column and value.
/// </summary>
public static class PackedTree
{
    // The bytes of the kinds; the task that writes them has the same.
    private const byte Map = 0;
    private const byte List = 1;
    private const byte Plain = 2;

    /// <summary>Reads a tree.</summary>
    /// <param name="packed">Its bytes.</param>
    /// <param name="file">The file's name in its places.</param>
    public static YamlMap Read(byte[] packed, string file)
    {
        using var reader = new BinaryReader(new MemoryStream(packed), Encoding.UTF8);
        string[] texts = new string[reader.Read7BitEncodedInt()];
        for (int i = 0; i < texts.Length; i++)
        {
            texts[i] = reader.ReadString();
        }

        return (YamlMap)ReadValue(reader, texts, file);
    }

    private static YamlValue ReadValue(BinaryReader reader, string[] texts, string file)
    {
        byte kind = reader.ReadByte();
        TextPlace place = ReadPlace(reader, file);
        return kind switch
        {
            Map => ReadMap(reader, texts, file, place),
            List => ReadList(reader, texts, file, place),
            _ => new YamlScalar(texts[reader.Read7BitEncodedInt()], kind != Plain, place),
        };
    }

    private static YamlMap ReadMap(BinaryReader reader, string[] texts, string file, TextPlace place)
    {
        var entries = new YamlEntry[reader.Read7BitEncodedInt()];
        for (int i = 0; i < entries.Length; i++)
        {
            string key = texts[reader.Read7BitEncodedInt()];
            entries[i] = new YamlEntry(key, ReadPlace(reader, file), ReadValue(reader, texts, file));
        }

        return new YamlMap(entries, place);
    }

    private static YamlList ReadList(BinaryReader reader, string[] texts, string file, TextPlace place)
    {
        var items = new YamlValue[reader.Read7BitEncodedInt()];
        for (int i = 0; i < items.Length; i++)
        {
            items[i] = ReadValue(reader, texts, file);
        }

        return new YamlList(items, place);
    }

    private static TextPlace ReadPlace(BinaryReader reader, string file) =>
        new(file, reader.Read7BitEncodedInt(), reader.Read7BitEncodedInt());
}
