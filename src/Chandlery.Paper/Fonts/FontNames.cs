using System.Buffers.Binary;
using System.Text;

namespace Chandlery.Paper.Fonts;

/// <summary>What a font file calls itself (OpenType specification 1.9.1, name table).</summary>
internal static class FontNames
{
    private const int PostScriptName = 6;
    private const int RowsStart = 6;
    private const int RowLength = 12;

    /// <summary>Its PostScript name, letters, figures and hyphens alone; "Font" where it has none.</summary>
    public static string PostScript(FontTables tables)
    {
        ReadOnlySpan<byte> names = tables.Of("name");
        int count = tables.Unsigned("name", 2);
        int texts = tables.Unsigned("name", 4);
        for (int i = 0; i < count && names.Length >= RowsStart + (RowLength * (i + 1)); i++)
        {
            ReadOnlySpan<byte> row = names.Slice(RowsStart + (RowLength * i), RowLength);
            int length = BinaryPrimitives.ReadUInt16BigEndian(row[8..]);
            int start = texts + BinaryPrimitives.ReadUInt16BigEndian(row[10..]);
            if (BinaryPrimitives.ReadUInt16BigEndian(row[6..]) != PostScriptName || start + length > names.Length)
            {
                continue;
            }

            // Plain letters whatever the platform: in UTF-16 every other byte is nought and falls away.
            var name = new StringBuilder();
            foreach (byte b in names.Slice(start, length))
            {
                if (char.IsAsciiLetterOrDigit((char)b) || b == '-')
                {
                    name.Append((char)b);
                }
            }

            if (name.Length > 0)
            {
                return name.ToString();
            }
        }

        return "Font";
    }
}
