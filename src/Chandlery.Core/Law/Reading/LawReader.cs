using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads the law's data files: the folder tree <c>data/</c>, given as texts by path. Each kind of file has a reader of its own.</summary>
public static class LawReader
{
    /// <summary>Reads everything.</summary>
    /// <param name="texts">Texts by path relative to <c>data/</c>, with forward slashes.</param>
    /// <param name="problems">Collects everything that is wrong.</param>
    /// <returns>The lawbook, or null when there are problems.</returns>
    public static Lawbook? Read(IReadOnlyDictionary<string, string> texts, Problems problems)
    {
        var files = new LawFiles(texts, problems);
        files.FindEditions();
        IReadOnlyCollection<string> statements = LanguageReader.KnownStatements(files);
        HazardVocabulary vocabulary = HazardsReader.Read(files.Open("law/hazards.yaml"), statements);
        if (!problems.None)
        {
            // Every other file refers to these two: what is wrong with them comes first.
            return null;
        }

        var codes = new LawCodes(vocabulary, statements);
        var substances = new SubstanceList(
            [.. new SubstanceReader(vocabulary).Read(files.Open("substances/list.yaml"))],
            SubstanceReader.ReadAllergens(files.Open("substances/allergens.yaml"))
        );
        var sentences = new SheetSentenceReader(vocabulary, SheetWordsReader.Subsections(files));
        SheetSentences shared = sentences.ReadShared(files.Open("safety-data-sheet/sentences.yaml"));
        var editions = new EditionReader(files, codes, substances, sentences, LanguageReader.WordKeys(files));
        var lawbook = new Lawbook(
            vocabulary,
            [.. files.Editions.Select(editions.Read)],
            [.. PlacesReader.Read(files.Open("places.yaml"), files.Editions)],
            substances,
            [.. LanguageReader.Read(files, statements)],
            BurningReader.Read(files.Open("burning.yaml")),
            [.. new SheetWordsReader(sentences.Texts, sentences.Labels).Read(files)],
            shared
        );
        return problems.None ? lawbook : null;
    }
}
