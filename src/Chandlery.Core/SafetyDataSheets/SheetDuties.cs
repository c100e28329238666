using Chandlery.Core.Classified;
using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>Finds when a sheet is due and which substances it names.</summary>
public static class SheetDuties
{
    /// <summary>When the sheet is due, with the reasons.</summary>
    public static SheetDutyFinding Find(SafetySheetRules rules, Classification classification, IReadOnlyList<Substance> substances)
    {
        IEnumerable<DutyClause> label = rules.LabelNote.Says.Length > 0 ? [rules.LabelNote] : [];
        if (classification.Classes.Count > 0)
        {
            return new SheetDutyFinding(SheetDuty.WithDelivery, [rules.Classified, rules.ForPublic]);
        }

        List<DutyClause> substancesOverShare =
        [
            .. substances
                .Select(s => (Substance: s, Row: rules.OnRequestFrom.FirstOrDefault(r => r.Reached(s))))
                .Where(p => p.Row is not null)
                .Select(p => new DutyClause($"{p.Substance.Name}: up to {p.Substance.Ingredient.WholeHigh}.", p.Row!.Clause)),
        ];
        return substancesOverShare.Count > 0
            ? new SheetDutyFinding(SheetDuty.OnRequest, [rules.OnRequest, .. substancesOverShare, .. label])
            : new SheetDutyFinding(SheetDuty.NotDue, [rules.NotDue, .. label]);
    }

    /// <summary>The substances that section 3 names, largest first. Substances of unknown hazard are named too: unknown is not harmless.</summary>
    public static IReadOnlyList<Substance> Named(SafetySheetRules rules, IReadOnlyList<Substance> substances) =>
        [
            .. substances
                .Where(s => !s.IsKnown || rules.NamedFrom.Any(r => r.Reached(s)))
                .OrderByDescending(s => s.Ingredient.WholeHigh.Value),
        ];
}
