using System.Runtime.InteropServices;

namespace Chandlery.Paper.Fonts;

/// <summary>
/// Cuts a font down to the glyphs in use with HarfBuzz's own subsetter, which the managed library does not hand out. What only
/// shapes or names letters is dropped: a PDF's text is shaped already.
/// </summary>
internal static class GlyphSubset
{
    private const string Library = "libHarfBuzzSharp";

    // hb_subset_flags_t and hb_subset_sets_t.
    private const uint NoHinting = 1;
    private const uint NoLayoutClosure = 0x200;
    private const int DroppedTables = 3;

    private static readonly string[] Dropped =
    [
        "cmap",
        "name",
        "OS/2",
        "post",
        "GSUB",
        "GPOS",
        "GDEF",
        "STAT",
        "kern",
        "gasp",
        "DSIG",
        "meta",
        "VORG",
        "vhea",
        "vmtx",
    ];

    /// <summary>A font file with these glyphs, numbered in this order from 1.</summary>
    /// <param name="face">The native face.</param>
    /// <param name="glyphs">Numbers of the glyphs in the full font, each once, without 0.</param>
    /// <exception cref="InvalidOperationException">The subsetter refuses the font.</exception>
    public static byte[] Make(nint face, IReadOnlyList<ushort> glyphs)
    {
        nint input = hb_subset_input_create_or_fail();
        nint subset = 0;
        try
        {
            if (input == 0)
            {
                throw new InvalidOperationException("HarfBuzz gives no memory for cutting down a font");
            }

            hb_subset_input_set_flags(input, NoHinting | NoLayoutClosure);
            _ = hb_subset_input_pin_all_axes_to_default(input, face);
            nint used = hb_subset_input_glyph_set(input);
            nint numbers = hb_subset_input_old_to_new_glyph_mapping(input);
            hb_set_add(used, 0);
            hb_map_set(numbers, 0, 0);
            for (int i = 0; i < glyphs.Count; i++)
            {
                hb_set_add(used, glyphs[i]);
                hb_map_set(numbers, glyphs[i], (uint)(i + 1));
            }

            nint dropped = hb_subset_input_set(input, DroppedTables);
            foreach (string table in Dropped)
            {
                hb_set_add(dropped, Tag(table));
            }

            subset = hb_subset_or_fail(face, input);
            return subset == 0 ? throw new InvalidOperationException("HarfBuzz cannot cut down this font") : Bytes(subset);
        }
        finally
        {
            hb_face_destroy(subset);
            hb_subset_input_destroy(input);
        }
    }

    private static byte[] Bytes(nint face)
    {
        nint blob = hb_face_reference_blob(face);
        try
        {
            nint data = hb_blob_get_data(blob, out uint length);
            var bytes = new byte[length];
            Marshal.Copy(data, bytes, 0, (int)length);
            return bytes;
        }
        finally
        {
            hb_blob_destroy(blob);
        }
    }

    private static uint Tag(string name) => ((uint)name[0] << 24) | ((uint)name[1] << 16) | ((uint)name[2] << 8) | name[3];

    [DllImport(Library)]
    private static extern nint hb_subset_input_create_or_fail();

    [DllImport(Library)]
    private static extern void hb_subset_input_destroy(nint input);

    [DllImport(Library)]
    private static extern void hb_subset_input_set_flags(nint input, uint flags);

    [DllImport(Library)]
    private static extern int hb_subset_input_pin_all_axes_to_default(nint input, nint face);

    [DllImport(Library)]
    private static extern nint hb_subset_input_glyph_set(nint input);

    [DllImport(Library)]
    private static extern nint hb_subset_input_old_to_new_glyph_mapping(nint input);

    [DllImport(Library)]
    private static extern nint hb_subset_input_set(nint input, int kind);

    [DllImport(Library)]
    private static extern nint hb_subset_or_fail(nint face, nint input);

    [DllImport(Library)]
    private static extern void hb_set_add(nint set, uint value);

    [DllImport(Library)]
    private static extern void hb_map_set(nint map, uint key, uint value);

    [DllImport(Library)]
    private static extern nint hb_face_reference_blob(nint face);

    [DllImport(Library)]
    private static extern void hb_face_destroy(nint face);

    [DllImport(Library)]
    private static extern nint hb_blob_get_data(nint blob, out uint length);

    [DllImport(Library)]
    private static extern void hb_blob_destroy(nint blob);
}
