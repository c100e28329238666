using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>The field by which a maker confirms what the program asked back.</summary>
internal static class ConfirmedShape
{
    // Written out: the shapes that hold these fields hold this one too, so none of them can be asked for its names here.

    /// <summary>Fields whose point could be a thousands mark.</summary>
    public static readonly string[] Amounts =
    [
        "netGrams",
        "netMillilitres",
        "waxGrams",
        "grams",
        "millilitres",
        "drops",
        "brimfulMl",
        "fillMl",
    ];

    /// <summary>What may be asked back, by the names of the fields.</summary>
    public static readonly string[] Names =
    [
        "load",
        .. Amounts,
        "temperatures",
        "flashPoint",
        "highestLoad",
        "meltingCelsius",
        "share",
        "telephone",
    ];

    public static readonly TextsField Confirmed = new(
        "confirmed",
        "Fields that were asked back and are meant as they stand, such as [load]. Write none before you were asked."
    )
    {
        Pattern = $"^({string.Join('|', Names)})$",
    };
}
