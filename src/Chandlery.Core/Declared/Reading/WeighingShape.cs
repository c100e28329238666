using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of a weighing.</summary>
internal static class WeighingShape
{
    public static readonly NumberField Tare = new("tareGrams", "What an empty package weighs, g.", "185", 0, PourShape.MostGrams)
    {
        LowAllowed = true,
        Needed = true,
    };

    public static readonly NumberField Grams = PourShape.Grams with { Needed = true };

    public static readonly GroupsField Packages = new(
        "packages",
        "What each full package weighs.",
        new Shape("weighedPackage", "A full package.", [Grams])
    )
    {
        Needed = true,
        NotEmpty = true,
    };

    public static readonly Shape Weighing = new(
        "weighing",
        "Candles of a batch that were weighed to check their contents",
        [DispatchShape.Batch, DispatchShape.On, TestShape.By with { About = "Who weighed." }, Tare, Packages]
    );
}
