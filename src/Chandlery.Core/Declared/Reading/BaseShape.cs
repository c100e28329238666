using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of the liquid that the oils of a diffuser or spray are dissolved in.</summary>
internal static class BaseShape
{
    public static readonly NumberField Density = new("densityGramsPerMl", "Density, g/ml.", "0.86", 0, 25);

    public static readonly GroupField HighestLoad = new("highestLoad", "The most oil that its supplier allows.", LoadShape.Load);

    public static readonly Shape Base = new(
        "base",
        "The liquid that the oils of a diffuser or spray are dissolved in",
        [WaxShape.Name, WaxShape.Supplier, IngredientShape.Table with { Needed = true }, HighestLoad, Density, .. NotifiedShape.Source]
    );
}
