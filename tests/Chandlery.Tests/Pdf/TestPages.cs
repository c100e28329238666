using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Tests.Pdf;

/// <summary>A page with every kind of item, and what is known of it.</summary>
internal static class TestPages
{
    public const double WidthMm = 90;
    public const double HeightMm = 60;
    public const double BleedMm = 3;

    /// <summary>Words that are hard to read back: one glyph for several characters, kerns, other scripts, a blank that does not break.</summary>
    public const string HardText = "3x4 -> AVATAR \u2206\u0394 \u2126\u03A9 \u00B5\u03BC 2\u00A0900 g d\u2011Limonene Žluťoučký ≥ ½";

    /// <summary>A ground in two process inks that goes beyond the page.</summary>
    public static Ink Ground { get; } = new(0xE8, 0xB0, 0x80, new Cmyk(0, 40, 60, 0));

    /// <summary>An ink of its own.</summary>
    public static Ink Copper { get; } = new(0xB0, 0x60, 0x30, new Cmyk(0, 55, 75, 25), "Copper (foil)");

    /// <summary>A varnish: over all that lies below.</summary>
    public static Ink Varnish { get; } = new(0xF4, 0xF4, 0xF4, new Cmyk(0, 0, 0, 5), "Varnish") { Overprints = true };

    public static Scene Page { get; } =
        new(
            WidthMm,
            HeightMm,
            [
                Box(-BleedMm, -BleedMm, WidthMm + (2 * BleedMm), 20 + BleedMm, Ground),
                new TaggedItem(TagRole.Heading, [Text("Harbour Bowl", Weight.Bold, 5, 10, 5, Ink.Black)]),
                new TaggedItem(
                    TagRole.Paragraph,
                    [
                        Text("Kann allergische", Weight.Regular, 5, 26, 3, Ink.Black),
                        Text("Reaktionen verursachen.", Weight.Regular, 5, 30, 3, Ink.Black),
                    ]
                )
                {
                    Language = "de",
                },
                Text(HardText, Weight.Regular, 5, 35, 2.2, Ink.Black),
                new TaggedItem(
                    TagRole.Figure,
                    [
                        new PathItem("M50 0 L100 50 L50 100 L0 50 Z", 70, 22, 0.15, Ink.SignalRed, null, 0),
                        new PathItem("M50 20 A30 30 0 0 1 80 50", 70, 22, 0.15, null, Ink.Black, 6),
                    ]
                )
                {
                    Alternative = "Warning sign – hazard",
                },
                new TaggedItem(
                    TagRole.Table,
                    [
                        Row(40, TagRole.TableHeader, "Substance", "Share"),
                        Strokes.Line(5, 41, 40, 41, Ink.Grey, 0.2),
                        Row(45, TagRole.TableCell, "Linalool", "1.2 %"),
                    ]
                ),
                new ClipItem("M0 0 H12 V12 H0 Z", 50, 40, [Box(45, 35, 12, 12, Copper), Box(56, 46, 20, 20, Varnish)]),
                new PictureItem(Shades(), 70, 42, 12, 8),
                Text("turned", Weight.Medium, 50, 58, 4, Ink.White) with
                {
                    AngleDegrees = -30,
                    Ink = Copper,
                },
                Text("white on ground", Weight.SemiBold, 50, 15, 4, Ink.White),
            ],
            []
        )
        {
            BleedMm = BleedMm,
            CutPath = "M2 0 H88 L90 2 V58 L88 60 H2 L0 58 V2 Z",
        };

    public static PaperDocument Document { get; } = new("Test – page (1)", "en", [Page]);

    public static PathItem Box(double x, double y, double width, double height, Ink ink) =>
        new(Strokes.BoxPath(width, height), x, y, 1, ink, null, 0);

    private static TextItem Text(string text, Weight weight, double x, double baseline, double size, Ink ink) =>
        Strokes.Text(text, weight, x, baseline, size, ink);

    private static TaggedItem Row(double baseline, TagRole role, params string[] cells) =>
        new(
            TagRole.TableRow,
            [.. cells.Select((c, i) => new TaggedItem(role, [Text(c, Weight.Regular, 5 + (20 * i), baseline, 3, Ink.Black)]))]
        );

    // As fine as the page is looked at in tests, and smooth.
    private static PixelGrid Shades()
    {
        const int Width = 142;
        const int Height = 94;
        var rgb = new byte[Width * Height * 3];
        for (int i = 0; i < Width * Height; i++)
        {
            rgb[3 * i] = (byte)(i % Width);
            rgb[(3 * i) + 1] = 120;
            rgb[(3 * i) + 2] = (byte)(2 * (i / Width));
        }

        return new PixelGrid(Width, Height, rgb);
    }
}
