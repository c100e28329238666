using Chandlery.Core.Classified;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>Finds when a sheet is due and which substances it names.</summary>
public static class SheetDuties
{
    /// <summary>When the sheet is due, with the reasons.</summary>
    public static SheetDutyFinding Find(SafetySheetRules rules, Classification classification, IReadOnlyList<Substance> substances)
    {
        IEnumerable<DutyClause> label = rules.LabelNote is { } note ? [note] : [];
        if (classification.Classes.Count > 0)
        {
            return new SheetDutyFinding(SheetDuty.WithDelivery, [rules.Classified, rules.ForPublic]);
        }

        List<DutyClause> substancesOverShare =
        [
            .. substances
                .Select(s => (Substance: s, Row: rules.OnRequestFrom.FirstOrDefault(r => Reached(r, s))))
                .Where(p => p.Row is not null)
                .Select(p => new DutyClause(
                    $"{p.Substance.Name}: up to {FigureFormat.English.AtMost(p.Substance.Ingredient.WholeHigh)}.",
                    p.Row!.Clause
                )),
        ];
        return substancesOverShare.Count > 0
            ? new SheetDutyFinding(SheetDuty.OnRequest, [rules.OnRequest, .. substancesOverShare, .. label])
            : new SheetDutyFinding(SheetDuty.NotDue, [rules.NotDue, .. label]);
    }

    /// <summary>True when a substance reaches the share from which a row counts it.</summary>
    internal static bool Reached(ShareRow row, Substance substance) =>
        substance.Hazards.Any(h => row.Hazards.Contains(h.Category) && substance.Ingredient.WholeHigh.Reaches(Limit(row, substance, h)));

    private static MassPercent Limit(ShareRow row, Substance substance, SubstanceHazard hazard)
    {
        double from = row.From.Value;
        if (row.OwnLimitTimes > 0 && substance.LimitsIn(hazard.Category.Group) is { } own)
        {
            from = Math.Min(from, own.Lowest.Value * row.OwnLimitTimes);
        }

        return new MassPercent(row.DividedBy == MFactorKind.None ? from : from / hazard.M);
    }

    /// <summary>The substances that section 3 names, largest first. Substances of unknown hazard are named too: unknown is not harmless.</summary>
    public static IReadOnlyList<Substance> Named(SafetySheetRules rules, IReadOnlyList<Substance> substances) =>
        [
            .. substances
                .Where(s => !s.IsKnown || rules.NamedFrom.Any(r => Reached(r, s)))
                .OrderByDescending(s => s.Ingredient.WholeHigh.Value),
        ];
}
