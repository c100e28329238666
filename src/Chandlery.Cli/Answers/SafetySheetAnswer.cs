using Chandlery.Core.Assessed;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Yaml;

namespace Chandlery.Cli.Answers;

/// <summary>Whether a safety data sheet is due, for programs.</summary>
/// <param name="Candle">Name of the declaration.</param>
/// <param name="Edition">The edition of the law.</param>
/// <param name="Due">withDelivery, onRequest or notDue.</param>
/// <param name="Reasons">Why.</param>
internal sealed record SafetySheetAnswer(string Candle, string Edition, string Due, IReadOnlyList<SafetySheetReason> Reasons)
{
    public static SafetySheetAnswer Of(Assessment a, SheetDutyFinding duty) =>
        new(
            a.Id,
            a.Edition.Id,
            EnumName.Of(duty.Duty),
            [.. duty.Reasons.Select(r => new SafetySheetReason(a.Kind.Say(r.Says), r.Clause.IsNone ? null : r.Clause.Text))]
        );
}
