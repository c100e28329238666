namespace Chandlery.Core.Law;

/// <summary>Which marks have a value only under a condition: a row with such a mark must ask for one of its conditions.</summary>
public static class SheetMarkNeeds
{
    /// <summary>The conditions of which each alone is enough; empty for a mark that always has a value.</summary>
    public static IReadOnlyList<SheetCondition> Of(SheetMark mark) =>
        mark switch
        {
            SheetMark.Ufi => [SheetCondition.HasUfi],
            SheetMark.SupplierEmail => [SheetCondition.HasEmail],
            SheetMark.SupplierWeb => [SheetCondition.HasWeb],
            SheetMark.EmergencyTelephone => [SheetCondition.HasEmergencyTelephone],
            SheetMark.Undeclared => [SheetCondition.HasUndeclared],
            SheetMark.Concerning => [SheetCondition.HasConcerning],
            SheetMark.Persistent => [SheetCondition.HasPersistent],
            SheetMark.EndocrineForHealth => [SheetCondition.HasEndocrineForHealth],
            SheetMark.EndocrineForEnvironment => [SheetCondition.HasEndocrineForEnvironment],
            SheetMark.Dyes => [SheetCondition.Dyed],
            SheetMark.MeltingLow or SheetMark.MeltingHigh => [SheetCondition.MeltsAtOneTemperature, SheetCondition.MeltsOverARange],
            SheetMark.DensityLow or SheetMark.DensityHigh => [SheetCondition.HasOneDensity, SheetCondition.HasSeveralDensities],
            SheetMark.FlashPoints => [SheetCondition.HasOils],
            SheetMark.FlashPoint => [SheetCondition.HasFlashPoint],
            SheetMark.BoilingPoint => [SheetCondition.HasBoilingPoint],
            SheetMark.Viscosity => [SheetCondition.HasViscosity],
            SheetMark.LiquidDensity => [SheetCondition.HasLiquidDensity],
            SheetMark.LimitedUpTo => [SheetCondition.LimitedQuantity],
            SheetMark.TransportNames => [SheetCondition.NamedForTransport],
            SheetMark.TransportClasses =>
            [
                SheetCondition.DangerousGoods,
                SheetCondition.DangerousGoodsInSmallPackage,
                SheetCondition.DangerousGoodsInLargePackage,
            ],
            _ => [],
        };
}
