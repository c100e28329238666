namespace Chandlery.Tests.SecondCalculation;

/// <summary>
/// From which share on a substance gives a mixture a category. The upper end of a printed range is left out on purpose:
/// it only says where something worse begins. Where a declaration forgets the worse step, the milder one goes on, which is
/// the stricter reading.
/// </summary>
/// <param name="Result">What the mixture becomes.</param>
/// <param name="FromPercent">From this share on, percent by mass of the mixture.</param>
internal sealed record OwnLimit(HazardText Result, double FromPercent);
