using Chandlery.Core.Hazards;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Core.Law;

/// <summary>All that the program knows of law and language.</summary>
public sealed record Lawbook
{
    /// <summary>Hazard categories.</summary>
    public required HazardVocabulary Vocabulary { get; init; }

    /// <summary>The law, by place.</summary>
    public required Shelf<Edition> Editions { get; init; }

    /// <summary>Places of sale.</summary>
    public required IReadOnlyList<Place> Places { get; init; }

    /// <summary>Harmonised classes and known substances.</summary>
    public required SubstanceList Substances { get; init; }

    /// <summary>Languages.</summary>
    public required Shelf<Language> Languages { get; init; }

    /// <summary>Why there are no texts in a language that a place needs, by its code.</summary>
    public required IReadOnlyDictionary<string, string> WithoutTexts { get; init; }

    /// <summary>Kinds of product, by file name.</summary>
    public required Shelf<ProductKind> Kinds { get; init; }

    /// <summary>Burn-safety figures.</summary>
    public required BurnAdvice Burning { get; init; }

    /// <summary>Headings and words of safety data sheets, by language.</summary>
    public required Shelf<SheetWords> SheetWords { get; init; }

    /// <summary>Sentences of safety data sheets that all laws share.</summary>
    public required SheetSentences SheetSentences { get; init; }

    /// <summary>The law on the safety of products beside the label.</summary>
    public required ProductSafetyLaw Safety { get; init; }

    /// <summary>The place with this country code, or of this name, in small letters or capitals; null when there is none.</summary>
    public Place? FindPlace(string code) => Places.FirstOrDefault(p => p.HasCode(code)) ?? Places.FirstOrDefault(p => p.IsCalled(code));

    /// <summary>What to write instead of a place that there is not: the nearest that there is, else all of them.</summary>
    public string InsteadOfPlace(string written)
    {
        IEnumerable<string> names = Places.SelectMany(p => p.AlsoCalled.Prepend(p.Name).Prepend(p.Code.Text));

        // Of two letters every code is as near as every other.
        return written.Length > 2 && Suggestion.Nearest(written, names) is { } near
            ? $"Did you mean '{near}'?"
            : $"Known places: {string.Join(", ", Places.Select(p => $"{p.Code} ({p.Name})"))}.";
    }

    /// <summary>The edition with this id.</summary>
    public Edition Edition(string id) => Editions.Find(id) ?? throw new InvalidOperationException($"There is no edition '{id}'.");

    /// <summary>The language with this code, or null.</summary>
    public Language? FindLanguage(string code) => Languages.Find(code);
}
