using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of what a candle is packed in.</summary>
internal static class PackagingShape
{
    public static readonly TextField Part = new("part", "What it is.", "box") { Needed = true };

    public static readonly ChoiceField Material = new(
        "material",
        "What it is made of.",
        ["paper", "glass", "steel", "aluminium", "plastic", "wood", "composite", "other"]
    )
    {
        Needed = true,
    };

    public static readonly NumberField Grams = PourShape.Grams with { About = "What one weighs, g.", Needed = true };
    public static readonly TextField Mark = new("mark", "Its material code.", "PAP 21");

    public static readonly GroupsField Packaging = new(
        "packaging",
        "What it is packed in, the vessel as well: it counts as packaging unless a competent person says otherwise.",
        new Shape("packagingPart", "A part of what a candle is packed in.", [Part, Material, Grams, Mark])
    );

    public static readonly FlagField EMark = new(
        "eMark",
        "Whether the e-mark stands beside the quantity: then each batch is weighed, and the label has the mark once the weighings pass."
    );
}
