namespace Chandlery.Core.Law.ProductSafety;

/// <summary>What stands on packaging and where its grams are told.</summary>
/// <param name="Marks">The rows.</param>
public sealed record PackagingRules(IReadOnlyList<MarkRow> Marks);
