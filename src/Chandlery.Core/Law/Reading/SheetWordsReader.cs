using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads headings, words and translated sentences of the safety data sheet in one language.</summary>
/// <param name="files">The data files.</param>
/// <param name="english">English texts by key, of all editions that were read.</param>
/// <param name="labels">Keys of sentences with a label, whose translation stands among the words.</param>
/// <param name="readEditions">Reads the editions that were not read yet: a translation may be of a sentence of theirs.</param>
internal sealed class SheetWordsReader(
    LawFiles files,
    IReadOnlyDictionary<string, string> english,
    IReadOnlySet<string> labels,
    Action readEditions
)
{
    private const string FileName = "/safety-data-sheet.yaml";

    /// <summary>Numbers of all subsections, and of the section that has none: those that English has a heading for.</summary>
    public static IReadOnlyList<string> Subsections(LawFiles files) =>
        [
            .. files
                .Open("languages/en" + FileName)
                .Entries("headings")
                .Select(e => e.Key)
                .Where(k => k.Contains('.', StringComparison.Ordinal) || k == "16"),
        ];

    /// <summary>The words of a language, by its folder.</summary>
    public SheetWords Read(string folder)
    {
        Fields fields = files.Open($"languages/{folder}{FileName}");
        IReadOnlyList<YamlEntry> inEnglish = files.Open("languages/en" + FileName).Entries("words");
        HashSet<string> own = [.. inEnglish.Select(e => e.Key)];
        if (
            fields.Entries("words").Any(e => !own.Contains(e.Key) && !labels.Contains(e.Key))
            || fields.Entries("sentences").Any(e => !english.ContainsKey(e.Key))
        )
        {
            readEditions();
        }

        own.UnionWith(labels);
        foreach (YamlEntry entry in fields.Entries("words"))
        {
            if (
                entry.Value is YamlScalar { Text: var text }
                && inEnglish.FirstOrDefault(e => e.Key == entry.Key)?.Value is YamlScalar { Text: var reference }
            )
            {
                LanguageReader.CheckMarks(fields, entry, text, reference);
            }
        }

        var words = new SheetWords(
            LanguageReader.CheckFolder(fields, folder),
            fields.Text("checked", "how"),
            fields.NamedTexts("headings"),
            Known(fields, "words", own),
            Sentences(fields)
        )
        {
            Told = new ToldSentences(Told(fields), fields.NamedTexts("cited")),
        };
        fields.Done();
        return words;
    }

    // A translation leaves open what the English leaves open: a figure or clause must not get lost on the way.
    private Dictionary<string, string> Sentences(Fields fields)
    {
        Dictionary<string, string> sentences = Known(fields, "sentences", english.Keys.ToHashSet());
        foreach (YamlEntry entry in fields.Entries("sentences").Where(e => sentences.ContainsKey(e.Key)))
        {
            List<string> marks = [.. SheetSentenceReader.MarksOf(english[entry.Key]).Order()];
            if (!SheetSentenceReader.MarksOf(sentences[entry.Key]).Order().SequenceEqual(marks))
            {
                fields.Problems.Add(
                    entry.Value.Place,
                    $"'{entry.Key}' must have the same marks as its English text.",
                    $"It needs: {string.Join(", ", marks.Select(m => $"{{{m}}}").DefaultIfEmpty("none"))}."
                );
            }
        }

        return sentences;
    }

    private static Dictionary<string, string> Told(Fields fields)
    {
        IReadOnlyList<YamlEntry> entries = fields.Entries("told");
        Dictionary<string, string> texts = fields.NamedTexts("told", entries);
        foreach (YamlEntry entry in entries.Where(e => texts.ContainsKey(e.Key)))
        {
            LanguageReader.CheckMarks(fields, entry, texts[entry.Key], entry.Key);
        }

        return texts;
    }

    private static Dictionary<string, string> Known(Fields fields, string key, IReadOnlySet<string> known)
    {
        IReadOnlyList<YamlEntry> entries = fields.Entries(key);
        Dictionary<string, string> texts = fields.NamedTexts(key, entries);
        foreach (YamlEntry entry in entries.Where(e => !known.Contains(e.Key)))
        {
            string near = Suggestion.DidYouMean(entry.Key, known);
            fields.Problems.Add(entry.KeyPlace, $"'{entry.Key}' is nothing that the sheet says.", near);
            texts.Remove(entry.Key);
        }

        return texts;
    }
}
