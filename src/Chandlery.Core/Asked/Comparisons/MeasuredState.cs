using Chandlery.Core.Composed;
using Chandlery.Core.Declared;

namespace Chandlery.Core.Asked.Comparisons;

/// <summary>What was measured of a finished liquid, and the composition that it is declared with.</summary>
/// <param name="Facts">What was measured, with the document that it stands in.</param>
/// <param name="On">The composition.</param>
/// <param name="Clause">Where it stands that it is measured; empty where no rule on liquids is known.</param>
public sealed record MeasuredState(LiquidFacts Facts, Composition On, string Clause)
{
    // Shares that differ by less differ by the last figures of a calculation.
    private const int Decimals = 9;

    /// <summary>Whether a later state declares the same measurement of another composition.</summary>
    public bool IsStaleIn(MeasuredState later) =>
        Facts.Document == later.Facts.Document
        && Facts.FlashPoint == later.Facts.FlashPoint
        && Facts.Boiling == later.Facts.Boiling
        && Facts.Viscosity == later.Facts.Viscosity
        && !Shares(On).SetEquals(Shares(later.On));

    private static HashSet<(string Substance, double Low, double High)> Shares(Composition composition) =>
        [
            .. composition
                .Ingredients.Select(i =>
                    (i.Identity.Cas?.Text ?? i.Identity.Ec?.Text ?? i.Identity.PlainName, Rounded(i.Low.Value), Rounded(i.High.Value))
                )
                .Append(("", Rounded(composition.UnknownLow.Value), Rounded(composition.UnknownHigh.Value))),
        ];

    private static double Rounded(double percent) => Math.Round(percent, Decimals);
}
