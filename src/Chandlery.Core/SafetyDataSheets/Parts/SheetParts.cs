using Chandlery.Core.Hazards;
using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>All parts of the sheet that are computed.</summary>
internal static class SheetParts
{
    private static readonly IReadOnlyList<ISheetPart> All =
    [
        new ClassesPart(),
        new LabelElementsPart(),
        new UnknownToxicityPart(),
        new UnknownAquaticPart(),
        new CompositionPart(),
        new ResultsPart(SheetPart.HealthResults, HazardArea.Health),
        new NotMetPart(SheetPart.HealthNotMet, HazardArea.Health),
        new HealthNotComputedPart(),
        new EstimatesPart(),
        new ResultsPart(SheetPart.EnvironmentResults, HazardArea.Environment),
        new NotMetPart(SheetPart.EnvironmentNotMet, HazardArea.Environment),
        new LawSourcesPart(),
        new NotCoveredPart(),
        new StatementsPart(),
        new MethodsPart(),
        new DocumentsPart(),
        new UnassessedPart(),
        new AbbreviationsPart(),
    ];

    /// <summary>The part of this name.</summary>
    public static ISheetPart Find(SheetPart name) => All.First(p => p.Name == name);
}
