namespace Chandlery.Intake.Wording;

/// <summary>A day as a sheet prints it.</summary>
/// <param name="Day">The day it was read as.</param>
/// <param name="Doubt">Why it could be another day; null when it could not.</param>
internal sealed record PrintedDay(DateOnly Day, string? Doubt);
