using Chandlery.Core.Composed;
using Chandlery.Core.Declared;

namespace Chandlery.Core.Asked.Comparisons;

/// <summary>What was measured of a finished liquid, and the composition that it is declared with.</summary>
/// <param name="Facts">What was measured, with the document that it stands in.</param>
/// <param name="On">The composition.</param>
/// <param name="Clause">Where it stands that it is measured; empty where no rule on liquids is known.</param>
public sealed record MeasuredState(LiquidFacts Facts, Composition On, string Clause)
{
    /// <summary>Whether a later state declares the same measurement of another composition.</summary>
    public bool IsStaleIn(MeasuredState later) =>
        Facts.Document == later.Facts.Document
        && Facts.FlashPoint == later.Facts.FlashPoint
        && Facts.Boiling == later.Facts.Boiling
        && Facts.Viscosity == later.Facts.Viscosity
        && !Shares(On).SetEquals(Shares(later.On));

    // The same declarations come to the same figures; what is written otherwise is taken for another composition.
    private static HashSet<(string Substance, double Low, double High)> Shares(Composition composition) =>
        [
            .. composition
                .Ingredients.Select(i => (i.Identity.Cas?.Text ?? i.Identity.Ec?.Text ?? i.Identity.PlainName, i.Low.Value, i.High.Value))
                .Append(("", composition.UnknownLow.Value, composition.UnknownHigh.Value)),
        ];
}
