using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>The label that a maker asks for.</summary>
/// <param name="Form">Its shape.</param>
/// <param name="Size">Width and height; of a circle or ring its diameter twice; of a band the height counts.</param>
/// <param name="Corner">Corner radius; zero for square corners.</param>
/// <param name="Hole">Diameter of a ring's hole; zero otherwise.</param>
public sealed record LabelRequest(LabelForm Form, LabelSize Size, Millimetres Corner, Millimetres Hole)
{
    /// <inheritdoc/>
    public override string ToString() =>
        Form switch
        {
            LabelForm.Circle => $"circle of {Size.Width}",
            LabelForm.Ring => $"ring of {Size.Width} with a hole of {Hole}",
            LabelForm.Band => $"band of {Size}",
            LabelForm.Leaflet => $"leaflet of {Size}",
            _ => Size.ToString(),
        };
}
