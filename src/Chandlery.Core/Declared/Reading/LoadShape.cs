using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of a load that says what it is a percentage of.</summary>
internal static class LoadShape
{
    public static readonly NumberField Percent = new("percent", "Percent of what 'of' says.", "10", 0, 100)
    {
        Needed = true,
        LowAllowed = true,
    };

    public static readonly ChoiceField Of = new(
        "of",
        "wax: oil per 100 parts of wax. candle: oil in 100 parts of the scented melt. base: oil per 100 parts of a liquid base. product: oil in 100 parts of the finished liquid.",
        ["wax", "candle", "base", "product"]
    )
    {
        Needed = true,
    };

    public static readonly Shape Load = new(
        "load",
        "A load that says what it is a percentage of: 10 % of the wax is 9.09 % of the candle.",
        [Percent, Of]
    );
}
