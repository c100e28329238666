using Chandlery.Core.Law;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>The sheet's texts in a language; keeps count of the subsections in which English had to stand in.</summary>
/// <param name="words">Words of the sheet.</param>
/// <param name="phrases">Phrases in English.</param>
/// <param name="local">Words that are others where the sheet is handed out.</param>
/// <param name="kind">What the product is: our texts speak of candles.</param>
internal sealed class SheetTexts(SheetWords words, IReadOnlyDictionary<SheetPhrase, string> phrases, LocalWords local, ProductKind kind)
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
        local.In(words.Words.TryGetValue(sentence.Key, out string? own) ? own : English(sentence.Label ?? ""));

    /// <summary>A phrase with its marks filled in.</summary>
    public string Phrase(SheetPhrase phrase, params (string Mark, string Value)[] values)
    {
        string text = Translated(EnumName.Of(phrase), phrases[phrase]);
        return MarkText.Fill(text, mark => values.First(v => v.Mark == mark).Value);
    }

    /// <summary>A text that there is in English only; the sheet then says so.</summary>
    public string English(string text)
    {
        if (words.Code != EnglishCode && subsection.Length > 0 && !inEnglish.Contains(subsection))
        {
            inEnglish.Add(subsection);
        }

        return kind.Say(text);
    }

    // A translation speaks of candles as the English text does, and only the English one can be said of another kind.
    private string Translated(string key, string english)
    {
        string said = kind.Say(english);
        if (said != english)
        {
            return local.In(English(said));
        }

        if (!words.Sentences.TryGetValue(key, out string? own))
        {
            return local.In(HasLetters(english) ? English(english) : english);
        }

        hasTranslation = true;
        return local.In(own);
    }

    // "<= {high}" is the same in every language.
    private static bool HasLetters(string text) => MarkText.Fill(text, _ => "").Any(char.IsLetter);
}
