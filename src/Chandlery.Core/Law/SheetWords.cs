namespace Chandlery.Core.Law;

/// <summary>Headings and words of the sheet in one language.</summary>
/// <param name="Code">ISO 639-1 code.</param>
/// <param name="Checked">How they were checked.</param>
/// <param name="Headings">Headings by number of section or subsection.</param>
/// <param name="Words">Other words, and labels of sentences by their key.</param>
/// <param name="Sentences">Translated sentences and phrases by key; what is missing is printed in English.</param>
public sealed record SheetWords(
    string Code,
    string Checked,
    IReadOnlyDictionary<string, string> Headings,
    IReadOnlyDictionary<string, string> Words,
    IReadOnlyDictionary<string, string> Sentences
)
{
    /// <summary>What is put together in English, in this language.</summary>
    public ToldSentences Told { get; init; } = ToldSentences.None;
}
