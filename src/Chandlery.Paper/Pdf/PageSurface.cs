using Chandlery.Paper.Drawing;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Pdf;

/// <summary>Writes a page's content stream (ISO 32000-1, 7.8.2). Its unit is the millimetre, counted downwards from the top left.</summary>
/// <param name="content">Receives the operators.</param>
/// <param name="parts">What the document's pages share; all of this page was taken.</param>
/// <param name="marks">Marks for those who hear the document; null for a press.</param>
internal sealed class PageSurface(ByteText content, DocumentParts parts, PageMarks? marks) : ISurface
{
    private const int D = PdfUnits.Decimals;

    // Factors need more figures than lengths: they are multiplied by them.
    private const int FactorDecimals = 8;

    private State state = new("", "", false);

    /// <inheritdoc/>
    public void Draw(TextItem text)
    {
        if (text.Shaped.Glyphs.Length == 0)
        {
            return;
        }

        marks?.Text();
        Paint paint = parts.Palette.OfText(text.Ink);
        Use(paint, paint.Fill, null);
        FontUse font = parts.Font(text.Face);
        content.Put("BT ").Put(font.Name).Put(" ").Spaced(text.SizeMm, 4).Put("Tf ");
        if (text.AngleDegrees == 0)
        {
            content.Put("1 0 0 -1 ");
        }
        else
        {
            double cosine = Math.Cos(text.AngleDegrees * Math.PI / 180);
            double sine = Math.Sin(text.AngleDegrees * Math.PI / 180);
            content
                .Spaced(cosine, FactorDecimals)
                .Spaced(sine, FactorDecimals)
                .Spaced(sine, FactorDecimals)
                .Spaced(-cosine, FactorDecimals);
        }

        content.Spaced(text.XMm, D).Spaced(text.BaselineMm, D).Put("Tm ").Put(font.Shown(text.Shaped)).Put(" ET\n");
    }

    /// <inheritdoc/>
    public void Draw(PathItem path)
    {
        if (path.Fill is null && path.Stroke is null)
        {
            return;
        }

        marks?.Drawing();
        Paint? fill = path.Fill is { } f ? parts.Palette.Of(f) : null;
        Paint? stroke = path.Stroke is { } s ? parts.Palette.Of(s) : null;
        Use((fill ?? stroke)!, fill?.Fill, stroke?.Stroke);
        content.Put("q ");
        content
            .Spaced(path.ScaleMm, FactorDecimals)
            .Put("0 0 ")
            .Spaced(path.ScaleMm, FactorDecimals)
            .Spaced(path.XMm, D)
            .Spaced(path.YMm, D)
            .Put("cm ");
        if (stroke is not null)
        {
            content.Put("1 J 1 j ").Spaced(path.StrokeUnits, 5).Put("w ");
        }

        content.Put(PathOperators.Of(path.Path, path.ScaleMm));
        content.Put(
            (fill, stroke) switch
            {
                (not null, not null) => "B Q\n",
                (not null, null) => "f Q\n",
                _ => "S Q\n",
            }
        );
    }

    /// <inheritdoc/>
    public void Draw(ClipItem clip)
    {
        marks?.Close();
        State before = state;
        content.Put("q 1 0 0 1 ").Spaced(clip.XMm, D).Spaced(clip.YMm, D).Put("cm ");
        content.Put(PathOperators.Of(SkiaPaths.Scaled(clip.Path, clip.ScaleMm), 1));
        content.Put("W n 1 0 0 1 ").Spaced(-clip.XMm, D).Spaced(-clip.YMm, D).Put("cm\n");
        DrawAll(clip.Items);
        marks?.Close();
        content.Put("Q\n");
        state = before;
    }

    /// <inheritdoc/>
    public void Draw(PictureItem picture)
    {
        marks?.Drawing();
        Overprint(false);
        content.Put("q ").Spaced(picture.WidthMm, D).Put("0 0 ").Spaced(-picture.HeightMm, D);
        content.Spaced(picture.XMm, D).Spaced(picture.YMm + picture.HeightMm, D).Put("cm ");
        content.Put(parts.Picture(picture.Pixels)).Put(" Do Q\n");
    }

    /// <inheritdoc/>
    public void Draw(TaggedItem tagged)
    {
        marks?.Enter(tagged);
        DrawAll(tagged.Items);
        marks?.Leave();
    }

    /// <summary>Makes the millimetre the unit, downwards from a corner that is told in points from the lower left.</summary>
    public void Begin(double leftPoints, double topPoints)
    {
        content.Spaced(PdfUnits.PointsPerMm, FactorDecimals).Put("0 0 ").Spaced(-PdfUnits.PointsPerMm, FactorDecimals);
        content.Spaced(leftPoints, PdfUnits.PointDecimals).Spaced(topPoints, PdfUnits.PointDecimals).Put("cm\n");
    }

    /// <summary>Draws things from back to front.</summary>
    public void DrawAll(IReadOnlyList<SceneItem> items)
    {
        foreach (SceneItem item in items)
        {
            item.DrawOn(this);
        }
    }

    private void Use(Paint paint, string? fill, string? stroke)
    {
        Overprint(paint.Overprints);
        if (fill is not null && fill != state.Fill)
        {
            content.Put(fill);
            state = state with { Fill = fill };
        }

        if (stroke is not null && stroke != state.Stroke)
        {
            content.Put(stroke);
            state = state with { Stroke = stroke };
        }
    }

    private void Overprint(bool wanted)
    {
        if (wanted != state.Overprints)
        {
            content.Put(wanted ? "/Over gs\n" : "/Apart gs\n");
            state = state with { Overprints = wanted };
        }
    }

    // What the content stream has set, so that nothing is set twice.
    private sealed record State(string Fill, string Stroke, bool Overprints);
}
