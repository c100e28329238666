using Chandlery.Core.Classified;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Assessed;

/// <summary>Stops a candle whose package for the public lacks what its classes call for.</summary>
internal static class PackagingFindings
{
    /// <summary>One finding for each feature that is due and not declared.</summary>
    public static IEnumerable<Finding> Of(Vessel vessel, Verdict verdict)
    {
        var due = verdict
            .Law.Edition.Packaging.Where(d => !Has(vessel, d.Feature))
            .Select(d => (Duty: d, Causes: Causes(d, verdict)))
            .Where(d => d.Causes.Count > 0);
        foreach (var group in due.GroupBy(d => d.Duty.Feature))
        {
            PackagingDuty duty = group.First().Duty;
            yield return new Finding(
                Gravity.Stop,
                $"{string.Join(", ", group.SelectMany(d => d.Causes).Distinct())}: the package for the public needs {Words(duty)}. When {vessel.Name} has it, write '{Field(duty.Feature)}: yes' in its file.",
                duty.Clause
            );
        }
    }

    private static bool Has(Vessel vessel, PackagingFeature feature) =>
        feature == PackagingFeature.ChildResistant ? vessel.IsChildResistant : vessel.HasTactileWarning;

    private static List<string> Causes(PackagingDuty duty, Verdict verdict)
    {
        List<Substance> substances = duty.Cas.Count == 0 ? [] : [.. verdict.Substances.Where(s => s.CasNumbers.Any(duty.Cas.Contains))];
        bool reached = substances.Count > 0 && new MassPercent(substances.Sum(s => s.Ingredient.High.Value)).Reaches(duty.From);
        return
        [
            .. verdict.Classification.Classes.Where(c => duty.Hazards.Contains(c.Category)).Select(c => c.Category.Code),
            .. reached ? substances.Select(s => s.Name) : [],
        ];
    }

    private static string Words(PackagingDuty duty) =>
        duty.Feature == PackagingFeature.ChildResistant
            ? $"a child-resistant fastening ({duty.Standard})"
            : $"a warning of danger that can be felt ({duty.Standard})";

    private static string Field(PackagingFeature feature) =>
        feature == PackagingFeature.ChildResistant ? "childResistant" : "tactileWarning";
}
