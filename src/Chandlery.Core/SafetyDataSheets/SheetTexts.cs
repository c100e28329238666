using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>The sheet's texts in a language; keeps count of the subsections in which English had to stand in.</summary>
/// <param name="words">Words of the sheet.</param>
/// <param name="phrases">Phrases in English.</param>
/// <param name="local">Words that are others where the sheet is handed out.</param>
/// <param name="kind">What the product is: our English texts speak of candles.</param>
/// <param name="figures">How the language writes figures.</param>
internal sealed class SheetTexts(
    SheetWords words,
    IReadOnlyDictionary<SheetPhrase, string> phrases,
    LocalWords local,
    ProductKind kind,
    FigureFormat figures
)
{
    private const string EnglishCode = "en";
    private readonly List<string> inEnglish = [];
    private bool hasTranslation;
    private string subsection = "";

    /// <summary>Subsections with English in them, in order; empty for an English sheet.</summary>
    public IReadOnlyList<string> InEnglish => inEnglish;

    /// <summary>Whether any sentence was there in the language.</summary>
    public bool HasTranslation => hasTranslation;

    /// <summary>A word of the sheet.</summary>
    public string Word(string key) => local.In(words.Words[key]);

    /// <summary>Tells where the texts that follow stand.</summary>
    public void Begin(string number) => subsection = number;

    /// <summary>A sentence, with its marks.</summary>
    public string Sentence(SheetSentence sentence) => Translated(sentence.Key, sentence.Text);

    /// <summary>The label of a sentence.</summary>
    public string Label(SheetSentence sentence) =>
        words.Words.TryGetValue(sentence.Key, out string? own) ? Printed(own) : Told(sentence.Label ?? "");

    /// <summary>A citation, with its words in the language.</summary>
    public string Cited(string clause) => Printed(words.Told.Cited(clause));

    /// <summary>A phrase with its marks filled in.</summary>
    public string Phrase(SheetPhrase phrase, params (string Mark, string Value)[] values)
    {
        string text = Translated(EnumName.Of(phrase), phrases[phrase]);
        return MarkText.Fill(text, mark => values.First(v => v.Mark == mark).Value);
    }

    /// <summary>A text that is put together in English, in the language; in English where it is not known there, and the sheet then says so.</summary>
    public string Told(string text) =>
        Printed(words.Code == EnglishCode ? kind.Say(text) : words.Told.Find(text, figures) ?? English(text));

    private string English(string text)
    {
        if (words.Code != EnglishCode && subsection.Length > 0 && !inEnglish.Contains(subsection))
        {
            inEnglish.Add(subsection);
        }

        return kind.Say(text);
    }

    // A translation that several kinds of product share speaks of the product, so it holds for each.
    private string Translated(string key, string english)
    {
        if (words.Sentences.TryGetValue(key, out string? own))
        {
            hasTranslation = true;
            return Printed(own);
        }

        return Printed(HasLetters(english) ? English(english) : english);
    }

    private string Printed(string text) => Apostrophes.In(local.In(text));

    // "<= {high}" is the same in every language.
    private static bool HasLetters(string text) => MarkText.Fill(text, _ => "").Any(char.IsLetter);
}
