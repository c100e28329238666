using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Duties;

/// <summary>A duty for programs.</summary>
/// <param name="Duty">Short name.</param>
/// <param name="Places">Country codes.</param>
/// <param name="Says">What is due.</param>
/// <param name="State">done, open, later, notDue or byHand.</param>
/// <param name="Shown">By what it is shown, or what is missing.</param>
/// <param name="From">Since when; null when always.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record DutyReport(
    string Duty,
    IReadOnlyList<string> Places,
    string Says,
    string State,
    string Shown,
    string? From,
    string Clause
)
{
    /// <summary>The report of a line.</summary>
    public static DutyReport Of(DutyLine line) =>
        new(
            line.Duty.Id,
            line.Places,
            line.Duty.Says,
            EnumName.Of(line.State),
            line.Shown,
            line.Duty.InForce.From is { } from ? IsoDay.Plain(from) : null,
            line.Duty.Clause
        );
}
