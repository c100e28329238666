namespace Chandlery.Core.Law;

/// <summary>Conditions and hazard classes: those that a row names, or those that hold of a candle.</summary>
/// <param name="Facts">Conditions.</param>
/// <param name="ClassCodes">Codes of hazard classes, such as Skin Sens.</param>
public sealed record SheetConditions(IReadOnlySet<SheetCondition> Facts, IReadOnlySet<string> ClassCodes)
{
    /// <summary>True when nothing is named.</summary>
    public bool IsEmpty => Facts.Count == 0 && ClassCodes.Count == 0;

    /// <summary>True when one of these is among <paramref name="holding"/>.</summary>
    public bool AnyOf(SheetConditions holding) => Facts.Overlaps(holding.Facts) || ClassCodes.Overlaps(holding.ClassCodes);
}
