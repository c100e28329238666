using Chandlery.Core.Law.ProductSafety;

namespace Chandlery.Core.SafetyFiles.Duties;

/// <summary>A duty for a candle on a day.</summary>
/// <param name="Duty">The duty.</param>
/// <param name="Places">Country codes of the places where it holds.</param>
/// <param name="State">How it stands.</param>
/// <param name="Shown">By what it is shown, or what is missing.</param>
public sealed record DutyLine(DutyRow Duty, IReadOnlyList<string> Places, DutyState State, string Shown);
