namespace Chandlery.Intake.Wording;

/// <summary>M-factors as a sheet gives them.</summary>
/// <param name="Acute">For Aquatic Acute 1; null when not given.</param>
/// <param name="Chronic">For Aquatic Chronic 1; null when not given.</param>
public sealed record MFactors(double? Acute, double? Chronic);
