namespace Chandlery.Core.Law.ProductSafety;

/// <summary>What must be there before a candle is sold, beside its hazard label.</summary>
/// <param name="Roles">Who must be named beside the maker.</param>
/// <param name="Questions">What follows from answers.</param>
/// <param name="Claims">What follows from claims.</param>
public sealed record MarketRules(IReadOnlyList<RoleDuty> Roles, IReadOnlyList<QuestionRow> Questions, IReadOnlyList<ClaimRow> Claims);
