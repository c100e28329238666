using System.Globalization;
using System.Text;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Pdf;

/// <summary>What the pages of a document share: fonts, inks, pictures and drawings that come again.</summary>
/// <param name="palette">How inks are written.</param>
internal sealed class DocumentParts(IPalette palette)
{
    private readonly Dictionary<Face, FontUse> fonts = [];
    private readonly List<FontUse> fontOrder = [];
    private readonly Dictionary<PixelGrid, string> pictures = new(ReferenceEqualityComparer.Instance);
    private readonly List<PixelGrid> pictureOrder = [];

    /// <summary>How inks are written.</summary>
    public IPalette Palette => palette;

    /// <summary>Takes what a page needs into use, in the order in which it is drawn.</summary>
    public void Take(IReadOnlyList<SceneItem> items)
    {
        foreach (SceneItem item in items)
        {
            switch (item)
            {
                case TextItem text:
                    palette.Take(text.Ink);
                    Taken(text.Face).Take(text.Shaped);
                    break;
                case PathItem path:
                    Take(path.Fill);
                    Take(path.Stroke);
                    break;
                case PictureItem picture:
                    if (pictures.TryAdd(picture.Pixels, $"/I{pictureOrder.Count}"))
                    {
                        pictureOrder.Add(picture.Pixels);
                    }

                    break;
            }

            Take(item.Inside);
        }
    }

    /// <summary>A face that was taken.</summary>
    public FontUse Font(Face face) => fonts[face];

    /// <summary>The name of a picture that was taken.</summary>
    public string Picture(PixelGrid pixels) => pictures[pixels];

    /// <summary>Writes the resources.</summary>
    /// <param name="file">The file.</param>
    /// <param name="number">The number of the resource dictionary, which was reserved.</param>
    public void Write(PdfFile file, int number)
    {
        var entries = new StringBuilder(palette.Resources(file));
        if (pictureOrder.Count > 0)
        {
            entries.Append("/XObject<<");
            for (int i = 0; i < pictureOrder.Count; i++)
            {
                entries.Append(CultureInfo.InvariantCulture, $"/I{i} {WritePicture(file, pictureOrder[i])} 0 R");
            }

            entries.Append(">>");
        }

        if (fontOrder.Count > 0)
        {
            entries.Append("/Font<<");
            foreach (FontUse font in fontOrder)
            {
                int written = file.Reserve();
                FontObjects.Write(file, written, font);
                entries.Append(CultureInfo.InvariantCulture, $"{font.Name} {written} 0 R");
            }

            entries.Append(">>");
        }

        file.Add(number, new ByteText().Put("<<").Put(entries.ToString()).Put(">>"));
    }

    private void Take(Ink? ink)
    {
        if (ink is not null)
        {
            palette.Take(ink);
        }
    }

    private FontUse Taken(Face face)
    {
        if (!fonts.TryGetValue(face, out FontUse? use))
        {
            use = new FontUse(face, $"/F{fontOrder.Count}");
            fonts[face] = use;
            fontOrder.Add(use);
        }

        return use;
    }

    private int WritePicture(PdfFile file, PixelGrid grid) =>
        file.AddPacking(
            $"/Type/XObject/Subtype/Image/Width {grid.Width}/Height {grid.Height}/BitsPerComponent 8/ColorSpace{palette.PictureSpace}",
            palette.Pixels(grid)
        );
}
