using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;
using System.IO.Hashing;
using System.Reflection;
using System.Runtime.InteropServices;
using Chandlery.Core.Law;
using HarfBuzzSharp;
using SkiaSharp;
using Buffer = HarfBuzzSharp.Buffer;

namespace Chandlery.Paper.Fonts;

/// <summary>A face: shaping, metrics and the font file for drawing.</summary>
[SuppressMessage("Design", "CA1001", Justification = "Faces live as long as the process.")]
public sealed class Face
{
    // By the number of the weight: faces are asked for with every word that is measured.
    private static readonly Lazy<Face>[] Own = [.. Enum.GetValues<Weight>().Select(w => new Lazy<Face>(() => new Face(Shipped(w))))];

    // A face is never let go, and the page opens a maker's for every paper: the same file is the same face.
    private static readonly ConcurrentDictionary<UInt128, Face> Opened = new();

    // Contextual alternates would turn "3x4" into another sign: what is declared must read back as it was written.
    private static readonly Feature[] Features = [new(new Tag('c', 'a', 'l', 't'), 0)];

    private const string Hyphen = "-";

    // The native shaper reads the font file in place for as long as it lives: the bytes are pinned and never let go.
    private readonly GCHandle pinned;
    private readonly HarfBuzzSharp.Face face;
    private readonly Font font;
    private readonly ConcurrentDictionary<string, ShapedText> shaped = new();
    private readonly Lock shaping = new();
    private int shapedSinceCleared;
    private readonly ConcurrentDictionary<ushort, string> outlines = new();

    private Face(byte[] data)
    {
        Data = data;
        Typeface = SKTypeface.FromData(SKData.CreateCopy(Data));
        pinned = GCHandle.Alloc(Data, GCHandleType.Pinned);
        var blob = new Blob(pinned.AddrOfPinnedObject(), Data.Length, MemoryMode.ReadOnly);
        face = new HarfBuzzSharp.Face(blob, 0);
        UnitsPerEm = face.UnitsPerEm;
        font = new Font(face);
        font.SetScale(UnitsPerEm, UnitsPerEm);
        font.SetFunctionsOpenType();
        using var measuring = new SKFont(Typeface, UnitsPerEm) { Hinting = SKFontHinting.None, LinearMetrics = true };
        XHeight = -GlyphBounds(measuring, 'x').Top / UnitsPerEm;
        DigitHeight = -GlyphBounds(measuring, '1').Top / UnitsPerEm;
        Ascent = -GlyphBounds(measuring, 'Å').Top / UnitsPerEm;
        Descent = GlyphBounds(measuring, 'p').Bottom / UnitsPerEm;
        BlankWidth = (double)Shape(" ").Advance / UnitsPerEm;
        HyphenWidth = (double)Shape(Hyphen).Advance / UnitsPerEm;
    }

    /// <summary>The font file.</summary>
    public byte[] Data { get; }

    /// <summary>The face for drawing with all its glyphs.</summary>
    public SKTypeface Typeface { get; }

    /// <summary>Font units in the type size.</summary>
    public int UnitsPerEm { get; }

    /// <summary>Height of a lower-case x as a share of the type size, measured on the glyph.</summary>
    public double XHeight { get; }

    /// <summary>Height of the figure 1 as a share of the type size, measured on the glyph.</summary>
    public double DigitHeight { get; }

    /// <summary>How far descenders reach below the baseline, as a share of the type size, measured on the p.</summary>
    public double Descent { get; }

    /// <summary>How far capitals with accents reach above the baseline, as a share of the type size, measured on the Å.</summary>
    public double Ascent { get; }

    /// <summary>Width of a blank as a share of the type size.</summary>
    public double BlankWidth { get; }

    /// <summary>Width of a hyphen as a share of the type size.</summary>
    public double HyphenWidth { get; }

    /// <summary>The face of this weight in the family that travels with the program.</summary>
    public static Face Of(Weight weight) => Own[(int)weight].Value;

    /// <summary>A face of the maker's own.</summary>
    /// <param name="data">A TrueType or OpenType file.</param>
    /// <exception cref="FormatException">
    /// The file is no font, its maker forbids to put it into documents, or it lacks the letters that names need.
    /// </exception>
    public static Face Open(byte[] data)
    {
        if (EmbeddingRight.Refusal(data) is { } refusal)
        {
            throw new FormatException(refusal.TrimEnd('.'));
        }

        UInt128 hash = XxHash128.HashToUInt128(data);
        if (Opened.TryGetValue(hash, out Face? known))
        {
            return known;
        }

        using SKTypeface? typeface = SKTypeface.FromData(SKData.CreateCopy(data));
        if (typeface is null)
        {
            throw new FormatException("it is no font that can be read");
        }

        using var letters = new SKFont(typeface);
        return letters.ContainsGlyphs("xpÅ1")
            ? Opened.GetOrAdd(hash, _ => new Face(data))
            : throw new FormatException("it lacks Latin letters or figures");
    }

    /// <summary>Characters of a text that the face has no glyph for.</summary>
    public IReadOnlyList<string> Lacks(string text)
    {
        using var all = new SKFont(Typeface);
        return
        [
            .. text.EnumerateRunes()
                .Where(r => !System.Text.Rune.IsWhiteSpace(r) && !all.ContainsGlyphs(r.ToString()))
                .Select(r => r.ToString())
                .Distinct(),
        ];
    }

    /// <summary>Starts loading the faces, so that they are there when a document is laid out.</summary>
    public static void LoadAhead() => _ = Task.Run(() => (Of(Weight.Regular), Of(Weight.Bold)));

    /// <summary>Shapes a text; results are kept, since labels say the same words again and again.</summary>
    public ShapedText Shape(string text)
    {
        if (shaped.TryGetValue(text, out ShapedText? known))
        {
            return known;
        }

        // The native shaper serves one at a time.
        lock (shaping)
        {
            ShapedText result = ShapeAnew(text);
            if (++shapedSinceCleared > 20_000)
            {
                shaped.Clear();
                shapedSinceCleared = 0;
            }

            shaped[text] = result;
            return result;
        }
    }

    /// <summary>A glyph's outline in font units as SVG path data, y downwards; empty for a blank. Kept: there are few glyphs.</summary>
    public string Outline(ushort glyph) =>
        outlines.GetOrAdd(
            glyph,
            _ =>
            {
                using var font = new SKFont(Typeface, UnitsPerEm) { Hinting = SKFontHinting.None };
                using SKPath? outline = font.GetGlyphPath(glyph);
                return outline is { IsEmpty: false } ? outline.ToSvgPathData() : "";
            }
        );

    /// <summary>White between a glyph's start and its ink, as a share of the type size.</summary>
    public double LeftBearing(ushort glyph)
    {
        using var measuring = new SKFont(Typeface, UnitsPerEm) { Hinting = SKFontHinting.None, LinearMetrics = true };
        using SKPath? outline = measuring.GetGlyphPath(glyph);
        return outline is { IsEmpty: false } ? outline.TightBounds.Left / (double)UnitsPerEm : 0;
    }

    /// <summary>How far a glyph takes the pen by itself, font units.</summary>
    internal int Advance(ushort glyph) => font.GetHorizontalGlyphAdvance(glyph);

    /// <summary>A font file with these glyphs alone, numbered in this order from 1; number 0 is the sign for what is missing.</summary>
    internal byte[] Subset(IReadOnlyList<ushort> glyphs) => GlyphSubset.Make(face.Handle, glyphs);

    private static byte[] Shipped(Weight weight)
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"fonts/Inter-{weight}.ttf")!;
        var data = new byte[stream.Length];
        stream.ReadExactly(data);
        return data;
    }

    private ShapedText ShapeAnew(string text)
    {
        using var buffer = new Buffer();
        // A soft hyphen is drawn as a hyphen at a line's end; its text stays what it is, so that the word reads back whole.
        buffer.AddUtf16(text.EndsWith(WordBreaks.Soft) ? text[..^1] + Hyphen : text);
        buffer.GuessSegmentProperties();
        font.Shape(buffer, Features);
        GlyphInfo[] infos = buffer.GlyphInfos;
        GlyphPosition[] positions = buffer.GlyphPositions;
        var glyphs = new ushort[infos.Length];
        var clusters = new int[infos.Length];
        var starts = new int[infos.Length];
        int x = 0;
        for (int i = 0; i < infos.Length; i++)
        {
            glyphs[i] = (ushort)infos[i].Codepoint;
            clusters[i] = (int)infos[i].Cluster;
            starts[i] = x + positions[i].XOffset;
            x += positions[i].XAdvance;
        }

        return new ShapedText(text, glyphs, clusters, starts, x);
    }

    // The outline itself: bounds that a font hands out may be rounded outwards, and the law's height must not be.
    private static SKRect GlyphBounds(SKFont font, char sign)
    {
        using SKPath outline = font.GetGlyphPath(font.GetGlyph(sign))!;
        return outline.TightBounds;
    }
}
