using System.Text.RegularExpressions;
using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>
/// Reads the rows of the safety data sheet. A condition, subsection, part or mark that nobody knows is noted with its place, so
/// that no mistyped word drops a sentence or prints a brace.
/// </summary>
/// <param name="vocabulary">All hazard categories.</param>
/// <param name="subsections">The subsections of the sheet: those that English has a heading for.</param>
internal sealed partial class SheetSentenceReader(HazardVocabulary vocabulary, IReadOnlyCollection<string> subsections)
{
    private static readonly string[] Conditions = EnumName.All<SheetCondition>();
    private static readonly string[] Marks = EnumName.All<SheetMark>();
    private readonly string[] classCodes = [.. vocabulary.Categories.Select(c => c.ClassCode).Distinct()];
    private readonly Dictionary<string, string> texts = [];
    private readonly HashSet<string> labels = [];
    private readonly HashSet<string> shared = [];

    /// <summary>English texts by key: sentences of all laws and phrases.</summary>
    public IReadOnlyDictionary<string, string> Texts => texts;

    /// <summary>Keys of all sentences that have a label.</summary>
    public IReadOnlySet<string> Labels => labels;

    /// <summary>What all laws share; read before any edition.</summary>
    public SheetSentences ReadShared(Fields fields)
    {
        List<SheetRow> rows = [.. fields.Groups("rows").Select(ReadRow)];
        var sentences = new SheetSentences(rows, ReadAbbreviations(fields), ReadPhrases(fields));
        fields.Done();
        shared.UnionWith(rows.OfType<SheetSentence>().Select(s => s.Key));
        return sentences;
    }

    /// <summary>An edition's own sentences.</summary>
    public IReadOnlyList<SheetSentence> ReadOwn(Fields fields) =>
        [.. fields.Groups("sentences").Select(row => ReadSentence(row, ReadSubsection(row), isOwn: true))];

    /// <summary>Abbreviations.</summary>
    public IReadOnlyList<SheetSentence> ReadAbbreviations(Fields fields) =>
        [
            .. fields
                .Groups("abbreviations")
                .Select(row =>
                {
                    if (!row.Has("label"))
                    {
                        row.Text("label", "ATE");
                    }

                    return ReadSentence(row, "16", isOwn: false);
                }),
        ];

    /// <summary>The marks of a text.</summary>
    public static IEnumerable<string> MarksOf(string text) => MarkInText().Matches(text).Select(m => m.Groups[1].Value);

    private SheetRow ReadRow(Fields row)
    {
        string subsection = ReadSubsection(row);
        if (!row.Has("part"))
        {
            return ReadSentence(row, subsection, isOwn: false);
        }

        var read = new SheetPartRow(
            subsection,
            row.Enumeration("part", SheetPart.Classes),
            ReadConditions(row, "when"),
            ReadConditions(row, "unless")
        );
        row.Done();
        return read;
    }

    private SheetSentence ReadSentence(Fields row, string subsection, bool isOwn)
    {
        var sentence = new SheetSentence(subsection, ReadConditions(row, "when"), ReadConditions(row, "unless"))
        {
            Key = row.Text("key", "hotWax"),
            Label = row.OptionalText("label"),
            Text = row.Text("text", "the text"),
            IsStrong = row.OptionalFlag("strong") ?? false,
            Clause = row.Has("clause") ? LawCodes.Citation(row) : Citation.None,
            Replaces = isOwn ? row.OptionalText("replaces") : null,
        };
        row.Done();
        CheckMarks(row, sentence);
        Note(row, sentence.Key, sentence.Text, row.PlaceOf("key"));
        if (sentence.Label is not null)
        {
            labels.Add(sentence.Key);
        }

        if (sentence.Replaces is { } replaced && !shared.Contains(replaced))
        {
            row.Problems.Add(row.PlaceOf("replaces"), $"There is no sentence '{replaced}'.", Near(replaced, shared));
        }

        return sentence;
    }

    // One key, one text: translations go by the key. Editions that take a row over read it again.
    private void Note(Fields row, string key, string text, TextPlace place)
    {
        if (texts.TryGetValue(key, out string? known) && known != text)
        {
            row.Problems.Add(
                place,
                $"'{key}' is the key of another sentence already.",
                "Give each sentence a key of its own; what differs between laws goes into 'clause'."
            );
        }

        texts[key] = text;
    }

    private static void CheckMarks(Fields row, SheetSentence sentence)
    {
        bool hasClause = false;
        foreach (string name in MarksOf(sentence.Text))
        {
            if (!Marks.Contains(name))
            {
                row.Problems.Add(row.PlaceOf("text"), $"'{{{name}}}' is no mark that the sheet can fill in.", Near(name, Marks));
                continue;
            }

            SheetMark mark = Enum.Parse<SheetMark>(name, ignoreCase: true);
            hasClause |= mark == SheetMark.Clause;
            IReadOnlyList<SheetCondition> needs = SheetMarkNeeds.Of(mark);
            if (
                needs.Count > 0
                && (sentence.When.IsEmpty || sentence.When.ClassCodes.Count > 0 || !sentence.When.Facts.All(needs.Contains))
            )
            {
                row.Problems.Add(
                    row.PlaceOf("text"),
                    $"'{{{name}}}' has a value only under a condition.",
                    $"Write 'when: [{string.Join(", ", needs.Select(EnumName.Of))}]', or one of them, and nothing else in it."
                );
            }
        }

        if (hasClause == sentence.Clause.IsNone)
        {
            row.Problems.Add(
                row.PlaceOf(hasClause ? "text" : "clause"),
                hasClause ? "The text has the mark '{clause}', and the row has no clause." : "The clause is not printed.",
                hasClause ? "Add 'clause: ...'." : "Write '{clause}' where it belongs in the text."
            );
        }
    }

    private string ReadSubsection(Fields row)
    {
        string subsection = row.Text("in", "\"4.1\"");
        if (row.Has("in") && !subsections.Contains(subsection))
        {
            row.Problems.Add(
                row.PlaceOf("in"),
                $"The sheet has no subsection '{subsection}'.",
                $"Write one of: {string.Join(", ", subsections)}."
            );
        }

        return subsection;
    }

    private SheetConditions ReadConditions(Fields row, string key)
    {
        var facts = new HashSet<SheetCondition>();
        var classes = new HashSet<string>();
        foreach (YamlValue item in row.List(key))
        {
            string text = (item as YamlScalar)?.Text ?? "?";
            if (Conditions.Contains(text))
            {
                facts.Add(Enum.Parse<SheetCondition>(text, ignoreCase: true));
            }
            else if (classCodes.Contains(text))
            {
                classes.Add(text);
            }
            else
            {
                row.Problems.Add(
                    item.Place,
                    $"'{text}' is neither a condition of the sheet nor a hazard class.",
                    Near(text, [.. Conditions, .. classCodes])
                );
            }
        }

        return new SheetConditions(facts, classes);
    }

    private Dictionary<SheetPhrase, string> ReadPhrases(Fields fields)
    {
        Fields group = fields.Group("phrases", "{ unknown: unknown, ... }");
        var phrases = new Dictionary<SheetPhrase, string>();
        foreach (SheetPhrase phrase in Enum.GetValues<SheetPhrase>())
        {
            string key = EnumName.Of(phrase);
            string text = group.Text(key, "the words");
            phrases[phrase] = text;
            if (group.Has(key) && !MarksOf(text).Order().SequenceEqual(SheetPhraseMarks.Of(phrase).Order()))
            {
                group.Problems.Add(
                    group.PlaceOf(key),
                    $"The marks of '{key}' are not those that are filled in.",
                    $"It needs: {string.Join(", ", SheetPhraseMarks.Of(phrase).Select(m => $"{{{m}}}").DefaultIfEmpty("none"))}."
                );
            }

            Note(group, key, text, group.PlaceOf(key));
        }

        group.Done();
        return phrases;
    }

    private static string Near(string text, IReadOnlyCollection<string> known) =>
        Suggestion.Nearest(text, known) is { } near ? $"Did you mean '{near}'?" : $"Known here: {string.Join(", ", known)}.";

    [GeneratedRegex(@"\{([^{}]*)\}", RegexOptions.CultureInvariant)]
    private static partial Regex MarkInText();
}
