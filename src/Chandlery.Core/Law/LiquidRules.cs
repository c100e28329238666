namespace Chandlery.Core.Law;

/// <summary>What a law says of liquids beside what it says of every mixture.</summary>
public sealed record LiquidRules
{
    /// <summary>By what was measured.</summary>
    public required FlashRule Flash { get; init; }

    /// <summary>Rules of shares that hold for liquids alone.</summary>
    public required IReadOnlyList<LimitRule> Limits { get; init; }

    /// <summary>Hazards of liquids that are not computed.</summary>
    public required IReadOnlyList<NotComputed> NotComputed { get; init; }

    /// <summary>The statement on vapours; null for none.</summary>
    public required VapourRule? Vapour { get; init; }

    /// <summary>What may not be refilled in a shop; null where no rule is known.</summary>
    public required RefillRule? Refill { get; init; }

    /// <summary>All rules of classes.</summary>
    public IEnumerable<ClassRule> Rules => [Flash, .. Limits];
}
