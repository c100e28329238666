namespace Chandlery.Workbench;

/// <summary>An oil as the page shows it.</summary>
/// <param name="Oil">Name of its declaration.</param>
/// <param name="Amount">Amount as typed.</param>
/// <param name="Measure">share, grams, millilitres or drops.</param>
public sealed record OilEdit(string Oil, string Amount, string Measure);
