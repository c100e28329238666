using Chandlery.Core.Hazards;
using Chandlery.Core.Law.ProductSafety;

namespace Chandlery.Core.Law;

/// <summary>All that the program knows of law and language.</summary>
/// <param name="Vocabulary">Hazard categories.</param>
/// <param name="Editions">The law, by place.</param>
/// <param name="Places">Places of sale.</param>
/// <param name="Substances">Harmonised classes and known substances.</param>
/// <param name="Languages">Languages.</param>
/// <param name="WithoutTexts">Why there are no texts in a language that a place needs, by its code.</param>
/// <param name="Burning">Burn-safety figures.</param>
/// <param name="SheetWords">Headings and words of safety data sheets, by language.</param>
/// <param name="SheetSentences">Sentences of safety data sheets that all laws share.</param>
public sealed record Lawbook(
    HazardVocabulary Vocabulary,
    Shelf<Edition> Editions,
    IReadOnlyList<Place> Places,
    SubstanceList Substances,
    Shelf<Language> Languages,
    IReadOnlyDictionary<string, string> WithoutTexts,
    BurnAdvice Burning,
    Shelf<SheetWords> SheetWords,
    SheetSentences SheetSentences
)
{
    /// <summary>The law on the safety of products beside the label.</summary>
    public required ProductSafetyLaw Safety { get; init; }

    /// <summary>The place with this country code, or null.</summary>
    public Place? FindPlace(string code) => Places.FirstOrDefault(p => p.Code == code);

    /// <summary>The edition with this id.</summary>
    public Edition Edition(string id) => Editions.Find(id) ?? throw new InvalidOperationException($"There is no edition '{id}'.");

    /// <summary>The language with this code, or null.</summary>
    public Language? FindLanguage(string code) => Languages.Find(code);
}
