namespace Chandlery.Core.Classified;

/// <summary>One line of a working: what a substance adds.</summary>
/// <param name="Substance">Name.</param>
/// <param name="Cas">CAS number, or null.</param>
/// <param name="Hazard">The hazard that counts.</param>
/// <param name="Percent">Share in the finished candle, percent, high end.</param>
/// <param name="Factor">Weight times M-factor.</param>
/// <param name="Limit">The limit that this substance is measured by, percent; for acute toxicity its estimate.</param>
/// <param name="Adds">What it adds to the sum, in the unit of the threshold.</param>
/// <param name="Source">Whose word the hazard is.</param>
public sealed record WorkingLine(
    string Substance,
    string? Cas,
    string Hazard,
    double Percent,
    double Factor,
    double Limit,
    double Adds,
    string Source
);
