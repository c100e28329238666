using Chandlery.Core.Law.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading.ProductSafety;

/// <summary>Reads our words on product safety in one language: all that English has, and no other.</summary>
internal static class SafetyWordsReader
{
    /// <summary>Name of the file for listings and recalls in a language's folder.</summary>
    public const string FileName = "product-safety.yaml";

    /// <summary>Name of the file for the form to authorities.</summary>
    public const string AuthorityFileName = "authority.yaml";

    /// <summary>Name of the file for the page on how a maker looks after product safety.</summary>
    public const string ProcedureFileName = "procedure.yaml";

    /// <summary>The words of a file.</summary>
    /// <param name="folder">The language's folder.</param>
    /// <param name="file">Name of the file.</param>
    /// <param name="files">All files.</param>
    public static SafetyWords Read(string folder, string file, LawFiles files)
    {
        Dictionary<string, string> english = InEnglish(files.Open($"languages/en/{file}"));
        Fields fields = files.Open($"languages/{folder}/{file}");
        string code = LanguageReader.CheckFolder(fields, folder);
        string how = fields.Text("checked", "how");
        IReadOnlyList<YamlEntry> entries = fields.Entries("words");
        Dictionary<string, string> texts = fields.NamedTexts("words", entries);
        foreach (YamlEntry entry in entries)
        {
            if (!english.TryGetValue(entry.Key, out string? reference))
            {
                string near = Suggestion.DidYouMean(entry.Key, english.Keys);
                fields.Problems.Add(entry.KeyPlace, $"'{entry.Key}' is no word of {file}.", near);
            }
            else if (texts.TryGetValue(entry.Key, out string? text))
            {
                LanguageReader.CheckMarks(fields, entry, text, reference);
            }
        }

        foreach (string missing in english.Keys.Except(entries.Select(e => e.Key)))
        {
            fields.Problems.Add(fields.PlaceOf("words"), $"The word '{missing}' is missing.", $"In English it is: {english[missing]}");
        }

        fields.Done();
        return new SafetyWords(code, how, texts);
    }

    // What is wrong with English is said once, when English itself is read.
    private static Dictionary<string, string> InEnglish(Fields fields) =>
        fields.Entries("words").ToDictionary(e => e.Key, e => (e.Value as YamlScalar)?.Text ?? "");
}
