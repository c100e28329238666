namespace Chandlery.Tests.SecondCalculation;

/// <summary>Random figures of finished liquids that crowd around the bounds of the law.</summary>
internal sealed class RandomLiquids(Dice dice)
{
    private static readonly string[] Methods = ["EN ISO 1516", "EN ISO 1523", "EN ISO 2719", "EN ISO 3679", "EN ISO 3680", "EN ISO 13736"];

    // An open cup, and no test at all.
    private static readonly string[] WithoutForce = ["EN ISO 2592", "calculated"];

    private static readonly string[] Told =
    [
        GivenLiquid.NotClassified,
        GivenLiquid.NotClassified,
        "Flam. Liq. 1, H224",
        "Flam. Liq. 2, H225",
        "Flam. Liq. 3, H226",
    ];

    /// <summary>What is known of one liquid.</summary>
    public GivenLiquid Make() =>
        new(
            dice.Falls(0.85) ? Flash() : null,
            dice.Falls(0.7) ? Near(35, 35, 78, 20) : null,
            dice.Falls(0.3) ? dice.Falls(0.5) : null,
            dice.Falls(0.75) ? Near(20.5, 20.5, 3, 80) : null,
            dice.Falls(0.4) ? dice.Falls(0.5) : null,
            dice.Falls(0.3) ? dice.Pick(Told) : null
        );

    private GivenFlash Flash() =>
        new(Near(23, 35, 60, 93, 10, 45, 71), dice.Falls(0.15), dice.Pick(dice.Falls(0.9) ? Methods : WithoutForce));

    private double Near(params double[] bounds) => (double)((decimal)dice.Pick(bounds) + dice.Pick([0m, 0m, 0.1m, -0.1m]));
}
