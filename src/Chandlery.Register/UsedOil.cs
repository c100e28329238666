namespace Chandlery.Register;

/// <summary>An oil with the document it was declared from.</summary>
/// <param name="Oil">Name of the oil's declaration.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Document">Supplier's document.</param>
/// <param name="Revised">Its revision date, year-month-day.</param>
public sealed record UsedOil(string Oil, string Name, string Document, string Revised);
