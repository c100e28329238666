using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of a dye or another additive.</summary>
internal static class ExtraShape
{
    public static readonly TextField Name = new("name", "Trade name.", "Slate dye chip") { Needed = true };
    public static readonly TextField Supplier = new("supplier", "Who sells it.", "the name on the sheet") { Needed = true };
    public static readonly TextField Purpose = new("purpose", "What it is for.", "dye") { Needed = true };
    public static readonly NumberField HighestPercent = new("highestPercentOfWax", "Its maker's limit.", "1", 0, 100);

    public static readonly Shape Extra = new(
        "extra",
        "A dye, UV absorber or other additive",
        [Name, Supplier, Purpose, IngredientShape.Table with { Needed = true }, HighestPercent, .. NotifiedShape.Source]
    );
}
