using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>The label that a maker asks for.</summary>
/// <param name="Form">Its shape.</param>
/// <param name="Size">
/// Width and height; of a circle or ring its diameter twice; of a band the height counts; of a strip how far it comes down each side; of an outline those of the rectangle around it.
/// </param>
/// <param name="Corner">Corner radius; zero for square corners.</param>
/// <param name="Hole">Diameter of a ring's hole; zero otherwise.</param>
public sealed record LabelRequest(LabelForm Form, LabelSize Size, Millimetres Corner, Millimetres Hole)
{
    /// <summary>The cut line of an outline; null for other shapes, and before its file was read.</summary>
    public LabelOutline? Outline { get; init; }

    /// <summary>The file that holds the cut line; null where it is declared itself, and for other shapes.</summary>
    public OutlineFile? OutlineFile { get; init; }

    /// <summary>The same with a cut line, whose size is the label's.</summary>
    public LabelRequest Along(LabelOutline outline) =>
        this with
        {
            Outline = outline,
            Size = new LabelSize(new Millimetres(outline.WidthMm), new Millimetres(outline.HeightMm)),
        };

    /// <inheritdoc/>
    public override string ToString() =>
        Form switch
        {
            LabelForm.Circle => $"circle of {Size.Width}",
            LabelForm.Ring => $"ring of {Size.Width} with a hole of {Hole}",
            LabelForm.Band => $"band of {Size}",
            LabelForm.Leaflet => $"leaflet of {Size}",
            LabelForm.Strip => $"strip {Size.Width} wide that comes down {Size.Height}",
            LabelForm.Arch => $"arch of {Size}",
            LabelForm.Outline => $"outline of {Size}",
            _ => Size.ToString(),
        };
}
