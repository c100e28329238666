using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;

namespace Chandlery.Core.SafetyFiles.Recalls;

/// <summary>The words of a recall in one language, for one kind of product: what never burns is not spoken of as a candle.</summary>
/// <param name="words">All words of the language.</param>
/// <param name="kind">What kind of product is recalled.</param>
/// <param name="language">The language.</param>
public sealed class RecallWords(SafetyWords words, ProductKind kind, Language language)
{
    private const string OfMelts = "Melt";
    private const string OfOthers = "Other";

    /// <summary>Code of the language.</summary>
    public string Code => words.Code;

    // In English the kind has a word for the middle of a sentence.
    private string Called => Code == "en" ? kind.Name : language.Words[kind.Called.Scented];

    /// <summary>The text by its key, with the product called what it is.</summary>
    public string this[string key] => NoticeText.Fill(words.Words[KeyFor(key)], ("kind", Called));

    /// <summary>What is recalled, under its name: nothing more for a candle, whose texts call it one.</summary>
    public IEnumerable<string> CalledBelowName => kind.Burns ? [] : [language.Words[kind.Called.Scented]];

    private string KeyFor(string key) =>
        kind.Burns ? key
        : kind.State == PhysicalState.Solid && words.Words.ContainsKey(key + OfMelts) ? key + OfMelts
        : words.Words.ContainsKey(key + OfOthers) ? key + OfOthers
        : key;
}
