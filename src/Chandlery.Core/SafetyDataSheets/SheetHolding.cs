using Chandlery.Core.Assessed;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>Finds which conditions of the sheet hold of a candle.</summary>
internal static class SheetHolding
{
    /// <summary>The conditions, and the codes of the candle's hazard classes.</summary>
    public static SheetConditions Of(SheetContext context) =>
        new(
            Enum.GetValues<SheetCondition>().Where(c => Holds(c, context)).ToHashSet(),
            context.Assessment.Classification.Classes.Select(c => c.Category.ClassCode).ToHashSet()
        );

    private static bool Holds(SheetCondition condition, SheetContext context)
    {
        Assessment a = context.Assessment;
        Recipe recipe = a.Composition.Recipe;
        bool isClassified = a.Classification.Classes.Count > 0;
        return condition switch
        {
            SheetCondition.Indoor => a.Candle.Use != CandleUse.Outdoor,
            SheetCondition.Outdoor => a.Candle.Use == CandleUse.Outdoor,
            SheetCondition.Classified => isClassified,
            SheetCondition.NotClassified => !isClassified,
            SheetCondition.NamesSensitisers => a.Classification.Sensitisers.Count > 0,
            SheetCondition.HasUndeclared => a.Composition.HasUndeclared,
            SheetCondition.HasUnknownToxicity => a.Classification.UnknownToxicity is not null,
            SheetCondition.HasUnknownAquatic => a.Classification.UnknownAquatic is not null,
            SheetCondition.LabelShowsHazards => a.Edition.Label.ShowsHazards,
            SheetCondition.LabelShowsNoHazards => !a.Edition.Label.ShowsHazards,
            SheetCondition.HasLabelElements => HasLabelElements(a),
            SheetCondition.HasNoLabelElements => a.Edition.Label.ShowsHazards && !HasLabelElements(a) && !SaysUnknown(a),
            SheetCondition.HasConcerning => HasConcerning(context),
            SheetCondition.HasNoConcerning => !HasConcerning(context),
            SheetCondition.HasPersistent => context.With(context.Rules.Concerning.Persistent).Count > 0,
            SheetCondition.HasEndocrineForHealth => context.Concerning(context.Rules.Concerning.EndocrineForHealth).Count > 0,
            SheetCondition.HasEndocrineForEnvironment => context.Concerning(context.Rules.Concerning.EndocrineForEnvironment).Count > 0,
            SheetCondition.NamesSubstances => context.Named.Count > 0,
            SheetCondition.NamesNoSubstance => context.Named.Count == 0,
            SheetCondition.HasEmergencyTelephone => a.Maker.EmergencyTelephone is not null,
            SheetCondition.HasEmail => a.Maker.Email is not null,
            SheetCondition.HasWeb => a.Maker.Web is not null,
            SheetCondition.HasUfi => a.Edition.Ufi.Needed && a.Ufi is not null,
            SheetCondition.Dyed => WaxFigures.Dyes(recipe).Count > 0,
            SheetCondition.MeltsAtOneTemperature => WaxFigures.Melting(recipe) is { } m && m.Low == m.High,
            SheetCondition.MeltsOverARange => WaxFigures.Melting(recipe) is { } m && m.Low != m.High,
            SheetCondition.HasOneDensity => WaxFigures.Density(recipe) is { } d && d.Low == d.High,
            SheetCondition.HasSeveralDensities => WaxFigures.Density(recipe) is { } d && d.Low != d.High,
            SheetCondition.HasOils => recipe.Oils.Count > 0,
            SheetCondition.HasHealthClass => context.Results(HazardArea.Health).Count > 0,
            SheetCondition.HasHealthNotMet => context.NotMet(HazardArea.Health).Count > 0,
            SheetCondition.HasHealthNotComputed => context.HealthNotComputed.Any(),
            SheetCondition.HasEstimates => a.Substances.Any(s => s.Toxicity.Count > 0),
            SheetCondition.EnvironmentCovered => context.RulesFor(HazardArea.Environment).Any(),
            SheetCondition.EnvironmentNotCovered => !context.RulesFor(HazardArea.Environment).Any(),
            SheetCondition.HasEnvironmentClass => context.Results(HazardArea.Environment).Count > 0,
            SheetCondition.HasEnvironmentNotMet => context.NotMet(HazardArea.Environment).Count > 0,
            SheetCondition.DangerousGoods => context.Transport.IsDangerousGoods,
            SheetCondition.DangerousGoodsInSmallPackage => context.Transport is { IsDangerousGoods: true, IsSmallPackage: true },
            SheetCondition.DangerousGoodsInLargePackage => context.Transport is { IsDangerousGoods: true, IsSmallPackage: false },
            SheetCondition.NamedForTransport => context.Transport is { IsDangerousGoods: true, Entry.NamesSubstances: true },
            SheetCondition.DangerousToWaters => context.Transport.IsDangerousToWaters,
            SheetCondition.LimitedQuantity => context.Transport.IsLimitedQuantity,
            SheetCondition.Burns => a.Kind.Burns,
            SheetCondition.Warmed => !a.Kind.Burns && a.Kind.State == PhysicalState.Solid,
            SheetCondition.Liquid => a.Kind.State == PhysicalState.Liquid,
            SheetCondition.HasFlashPoint => a.Candle.Liquid?.FlashPoint is not null,
            SheetCondition.HasBoilingPoint => a.Candle.Liquid?.Boiling is not null,
            SheetCondition.HasViscosity => a.Candle.Liquid?.Viscosity is not null,
            SheetCondition.HasLiquidDensity => a.Candle.Liquid?.Density is not null,
            SheetCondition.HasStatements => context.StatementCodes.Count > 0,
            SheetCondition.HasUnassessed => a.Unassessed.Count > 0,
            _ => throw new InvalidOperationException($"nobody finds out whether {condition} holds"),
        };
    }

    private static bool SaysUnknown(Assessment a) =>
        a.Classification.UnknownToxicity is not null || a.Classification.UnknownAquatic is not null;

    private static bool HasLabelElements(Assessment a) =>
        a.Label.Pictograms.Count + a.Label.Hazard.Count + a.Label.Supplemental.Count + a.Label.Precautionary.Count > 0;

    private static bool HasConcerning(SheetContext context) => context.Concerning(context.Rules.Concerning.All).Count > 0;
}
