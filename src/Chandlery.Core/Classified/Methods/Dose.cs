using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Classified.Methods;

/// <summary>How toxic a substance is in one form (by mouth, as vapour, as dust...).</summary>
/// <param name="Substance">The substance.</param>
/// <param name="Hazard">The class that it has, or that its estimate amounts to.</param>
/// <param name="Form">The form.</param>
/// <param name="Estimate">The acute toxicity estimate, in the form's unit.</param>
/// <param name="IgnoreBelow">The share below which it does not count.</param>
/// <param name="Source">Whose word it is.</param>
public sealed record Dose(
    Substance Substance,
    HazardCategory Hazard,
    ExposureRoute Form,
    double Estimate,
    MassPercent IgnoreBelow,
    string Source
)
{
    /// <summary>How much of a category one percent of the substance fills, against a bound for a mixture of 100 %: percent times bound over estimate.</summary>
    public double FillsPerPercent(ToxicityBound bound) => bound.UpTo[Form] / Estimate;
}
