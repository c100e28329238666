namespace Chandlery.Workbench.Answers;

/// <summary>An oil of a blend.</summary>
/// <param name="Oil">Name of its declaration.</param>
/// <param name="Percent">Percent of the blend.</param>
internal sealed record OilPercent(string Oil, double Percent);
