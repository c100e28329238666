using Chandlery.Core.Assessed;
using Chandlery.Core.SafetyFiles.Duties;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Records;

/// <summary>The page of a candle's duties.</summary>
public static class DutyRecord
{
    /// <summary>The page.</summary>
    public static KeptRecord Of(Assessment a, IReadOnlyList<DutyLine> duties) =>
        new(
            "Duties",
            a.Candle.Name,
            [
                $"{a.Id}, {string.Join(", ", a.Places.Select(p => p.Name))}, as of {IsoDay.Plain(a.AsOf)}. What the declarations show; what a person must do is said so.",
            ],
            [
                .. new[] { DutyState.Open, DutyState.ByHand, DutyState.Done, DutyState.Later, DutyState.NotDue }
                    .Select(state => (state, Lines: duties.Where(d => d.State == state).ToList()))
                    .Where(s => s.Lines.Count > 0)
                    .Select(s => new RecordSection(
                        a.Kind.Say(Words(s.state)),
                        RecordSection.Table(
                            [36, 34, 30],
                            ["What is due", "Shown by, or missing", "Where it stands"],
                            [.. s.Lines.Select(l => new[] { l.Duty.Says, l.Shown, l.Duty.Clause.Text })],
                            ""
                        )
                    )),
                new RecordSection("Not looked at here", [.. RecordSection.Texts(a.Edition.DoesNotCover.Select(a.Kind.Say))]),
            ]
        );

    /// <summary>A state as a heading.</summary>
    public static string Words(DutyState state) =>
        state switch
        {
            DutyState.Done => "Done",
            DutyState.Open => "Open",
            DutyState.Later => "Later",
            DutyState.NotDue => "Not due for this candle",
            _ => "By hand",
        };
}
