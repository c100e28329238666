namespace Chandlery.Tests.SecondCalculation;

/// <summary>What is known of a finished liquid; what is null nobody has measured or said.</summary>
/// <param name="Flash">Flash point.</param>
/// <param name="Boiling">Initial boiling point, degrees Celsius.</param>
/// <param name="SustainsCombustion">Result of test L.2 of the UN Manual of Tests and Criteria.</param>
/// <param name="Viscosity">Kinematic viscosity at 40 degrees Celsius, mm2/s.</param>
/// <param name="FormsVapour">Whether it can form a flammable mixture of vapour and air in use.</param>
/// <param name="Class">The class that a supplier gives the finished liquid, or <see cref="NotClassified"/>.</param>
internal sealed record GivenLiquid(
    GivenFlash? Flash,
    double? Boiling,
    bool? SustainsCombustion,
    double? Viscosity,
    bool? FormsVapour,
    string? Class
)
{
    /// <summary>What stands for a supplier's word that the liquid has no physical hazard.</summary>
    public const string NotClassified = "not classified";
}
