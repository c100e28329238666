using Chandlery.Paper.Fonts;

namespace Chandlery.Paper.Scenes;

/// <summary>Colours that documents use.</summary>
public enum Ink
{
    /// <summary>Black.</summary>
    Black,

    /// <summary>White.</summary>
    White,

    /// <summary>The red of hazard pictograms.</summary>
    Red,

    /// <summary>A grey for lines that carry no meaning.</summary>
    Grey,
}

/// <summary>Something on a page. Lengths are millimetres from the page's top left corner.</summary>
public abstract record SceneItem
{
    /// <summary>The same thing elsewhere.</summary>
    /// <param name="xMm">How far to the right.</param>
    /// <param name="yMm">How far down.</param>
    public abstract SceneItem Moved(double xMm, double yMm);
}

/// <summary>A line of text.</summary>
/// <param name="Shaped">Its glyphs.</param>
/// <param name="Weight">Its face.</param>
/// <param name="XMm">Start.</param>
/// <param name="BaselineMm">Baseline.</param>
/// <param name="SizeMm">Type size.</param>
/// <param name="Ink">Colour.</param>
public sealed record TextItem(ShapedText Shaped, Weight Weight, double XMm, double BaselineMm, double SizeMm, Ink Ink) : SceneItem
{
    /// <summary>Width of the line, millimetres.</summary>
    public double WidthMm => Shaped.Advance * SizeMm / Face.Of(Weight).UnitsPerEm;

    /// <inheritdoc/>
    public override SceneItem Moved(double xMm, double yMm) => this with { XMm = XMm + xMm, BaselineMm = BaselineMm + yMm };
}

/// <summary>A filled or stroked path, in units of its own that are scaled to millimetres.</summary>
/// <param name="Path">SVG path data.</param>
/// <param name="XMm">Where the path's origin lies.</param>
/// <param name="YMm">Where the path's origin lies.</param>
/// <param name="ScaleMm">Millimetres per unit of the path.</param>
/// <param name="Fill">Fill colour, or null.</param>
/// <param name="Stroke">Line colour, or null.</param>
/// <param name="StrokeUnits">Line width in units of the path.</param>
public sealed record PathItem(string Path, double XMm, double YMm, double ScaleMm, Ink? Fill, Ink? Stroke, double StrokeUnits) : SceneItem
{
    /// <inheritdoc/>
    public override SceneItem Moved(double xMm, double yMm) => this with { XMm = XMm + xMm, YMm = YMm + yMm };
}

/// <summary>Where something with a legal size lies, for proofs and checks.</summary>
/// <param name="Name">What it is, such as a pictogram's code.</param>
/// <param name="XMm">Left.</param>
/// <param name="YMm">Top.</param>
/// <param name="WidthMm">Width.</param>
/// <param name="HeightMm">Height.</param>
public sealed record Mark(string Name, double XMm, double YMm, double WidthMm, double HeightMm);

/// <summary>A finished page, ready to be drawn in any format.</summary>
/// <param name="WidthMm">Width.</param>
/// <param name="HeightMm">Height.</param>
/// <param name="Items">What is on it, from back to front.</param>
/// <param name="Marks">Where things with a legal size lie.</param>
public sealed record Scene(double WidthMm, double HeightMm, IReadOnlyList<SceneItem> Items, IReadOnlyList<Mark> Marks);

/// <summary>Pages with the metadata that a PDF carries.</summary>
/// <param name="Title">Title.</param>
/// <param name="Language">Language code.</param>
/// <param name="Pages">The pages.</param>
public sealed record PaperDocument(string Title, string Language, IReadOnlyList<Scene> Pages);
