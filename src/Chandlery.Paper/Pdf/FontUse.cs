using Chandlery.Paper.Fonts;

namespace Chandlery.Paper.Pdf;

/// <summary>
/// A face in a document: which of its glyphs are drawn, and under which codes. A code stands for a glyph and what it means there,
/// since one glyph may stand for several characters (the sign of the ohm and the Greek letter) and text must read back as it was set.
/// </summary>
/// <param name="face">The face.</param>
/// <param name="name">The name of its resource.</param>
internal sealed class FontUse(Face face, string name)
{
    // What stands for no character of its own, such as an accent drawn apart: a joiner that takes no room.
    private const string NoCharacter = "\u2060";

    private readonly Dictionary<(ushort Glyph, string Meaning), int> codes = [];
    private readonly Dictionary<ushort, int> numbers = [];
    private readonly List<FontCode> order = [];
    private readonly Dictionary<ShapedText, byte[]> lines = new(ReferenceEqualityComparer.Instance);

    /// <summary>The face.</summary>
    public Face Face => face;

    /// <summary>The name of its resource.</summary>
    public string Name => name;

    /// <summary>The codes in use, from 1.</summary>
    public IReadOnlyList<FontCode> Codes => order;

    /// <summary>The glyphs in use by their numbers in the embedded font, from 1.</summary>
    public IReadOnlyList<ushort> Glyphs => [.. numbers.OrderBy(n => n.Value).Select(n => n.Key)];

    /// <summary>Whether every code is the number of its glyph in the embedded font.</summary>
    public bool IsPlain => order.TrueForAll(c => c.Code == c.Number);

    /// <summary>How far a glyph takes the pen, thousandths of the type size, as the document states it.</summary>
    public double Width(ushort glyph) => Math.Round(face.Advance(glyph) * 1000.0 / face.UnitsPerEm, 1);

    /// <summary>Takes the glyphs of a text into use.</summary>
    public void Take(ShapedText text)
    {
        if (!lines.ContainsKey(text))
        {
            lines[text] = Write(text);
        }
    }

    /// <summary>The operators that show a text that was taken: a string, or strings with kerns between them.</summary>
    public ReadOnlySpan<byte> Shown(ShapedText text) => lines[text];

    private byte[] Write(ShapedText text)
    {
        var written = new ByteText();
        double pen = 0;
        bool kerned = false;
        for (int i = 0; i < text.Glyphs.Length; i++)
        {
            // The pen is followed as the document's rounded widths move it, so that roundings do not add up along a line.
            double wanted = text.Positions[i] * 1000.0 / face.UnitsPerEm;
            int kern = (int)Math.Round(wanted - pen);
            if (kern != 0)
            {
                written.Put(i > 0 ? ")" : "").Put(-kern).Put("(");
                pen += kern;
                kerned = true;
            }
            else if (i == 0)
            {
                written.Put("(");
            }

            int code = CodeOf(text.Glyphs[i], Meaning(text, i));
            Escaped(written, (byte)(code >> 8));
            Escaped(written, (byte)code);
            pen += Width(text.Glyphs[i]);
        }

        return kerned ? new ByteText().Put("[").Put(written.Written).Put(")]TJ").Written.ToArray() : written.Put(")Tj").Written.ToArray();
    }

    private static void Escaped(ByteText written, byte one)
    {
        switch (one)
        {
            case (byte)'(':
            case (byte)')':
            case (byte)'\\':
                written.PutByte((byte)'\\').PutByte(one);
                break;
            case (byte)'\r':
                written.Put("\\r");
                break;
            default:
                written.PutByte(one);
                break;
        }
    }

    private int CodeOf(ushort glyph, string meaning)
    {
        if (codes.TryGetValue((glyph, meaning), out int known))
        {
            return known;
        }

        if (glyph != 0 && !numbers.ContainsKey(glyph))
        {
            numbers[glyph] = numbers.Count + 1;
        }

        int code = order.Count + 1;
        order.Add(new FontCode(code, glyph == 0 ? 0 : numbers[glyph], glyph, meaning));
        codes[(glyph, meaning)] = code;
        return code;
    }

    // Glyphs of one cluster share its characters: one each, the last all that are left.
    private static string Meaning(ShapedText text, int index)
    {
        int first = index;
        while (first > 0 && text.Clusters[first - 1] == text.Clusters[index])
        {
            first--;
        }

        int last = index;
        while (last + 1 < text.Clusters.Length && text.Clusters[last + 1] == text.Clusters[index])
        {
            last++;
        }

        int start = text.Clusters[index];
        int end = last + 1 < text.Clusters.Length ? text.Clusters[last + 1] : text.Text.Length;
        int place = start;
        for (int i = first; i < index && place < end; i++)
        {
            place += char.IsSurrogatePair(text.Text, place) ? 2 : 1;
        }

        if (place >= end)
        {
            return NoCharacter;
        }

        return index == last ? text.Text[place..end] : text.Text.Substring(place, char.IsSurrogatePair(text.Text, place) ? 2 : 1);
    }
}
