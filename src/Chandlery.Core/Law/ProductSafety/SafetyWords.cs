namespace Chandlery.Core.Law.ProductSafety;

/// <summary>Our own words for listings and recalls in one language.</summary>
/// <param name="Code">Code of the language.</param>
/// <param name="Checked">How they were checked.</param>
/// <param name="Words">The words by key.</param>
public sealed record SafetyWords(string Code, string Checked, IReadOnlyDictionary<string, string> Words)
{
    /// <summary>The language that a paper is in whose own has no words.</summary>
    public const string Fallback = "en";
}
