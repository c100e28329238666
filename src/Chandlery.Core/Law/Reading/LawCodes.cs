using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>
/// Reads codes that refer to something else: hazards, statements, pictograms, papers. A code that refers to nothing is
/// noted with its place and the nearest known one, so that no mistyped letter silently drops a rule.
/// </summary>
/// <param name="vocabulary">All hazard categories.</param>
/// <param name="statements">All statements that the program has a text for.</param>
/// <param name="papers">Short names of all papers that are made.</param>
internal sealed class LawCodes(HazardVocabulary vocabulary, IReadOnlyCollection<string> statements, IReadOnlyCollection<string> papers)
{
    private static readonly StatementCode StandIn = StatementCode.Of("H317");

    /// <summary>All hazard categories.</summary>
    public HazardVocabulary Vocabulary => vocabulary;

    /// <summary>A citation that must be there.</summary>
    public static Citation Citation(Fields fields, string key = "clause") =>
        Hazards.Citation.Of(fields.Text(key, "the document and its clause"));

    /// <summary>One hazard category.</summary>
    public HazardCategory Hazard(Fields fields, string key) => FindHazard(fields, fields.Text(key, "Skin Sens. 1B"), fields.PlaceOf(key));

    /// <summary>A list of hazard categories.</summary>
    public List<HazardCategory> Categories(Fields fields, string key) =>
        [.. fields.List(key).Select(item => FindHazard(fields, (item as YamlScalar)?.Text ?? "?", item.Place))];

    /// <summary>A list of hazard categories, or of classes that stand for all their categories.</summary>
    public List<HazardCategory> CategoriesOrClasses(Fields fields, string key)
    {
        var found = new List<HazardCategory>();
        foreach (YamlValue item in fields.List(key))
        {
            string text = (item as YamlScalar)?.Text ?? "?";
            List<HazardCategory> meant = [.. vocabulary.Categories.Where(c => c.ClassCode == text)];
            found.AddRange(meant.Count > 0 ? meant : [FindHazard(fields, text, item.Place)]);
        }

        return found;
    }

    /// <summary>A statement that must be there.</summary>
    public StatementCode Statement(Fields fields, string key) => Find(fields, fields.Text(key, "H317"), fields.PlaceOf(key));

    /// <summary>A statement that may be missing.</summary>
    public StatementCode? OptionalStatement(Fields fields, string key) =>
        fields.OptionalText(key) is { } text ? Find(fields, text, fields.PlaceOf(key)) : null;

    /// <summary>A list of statements; empty when missing.</summary>
    public IReadOnlyList<StatementCode> Statements(Fields fields, string key) =>
        [.. fields.List(key).Select(item => Find(fields, (item as YamlScalar)?.Text ?? "?", item.Place))];

    /// <summary>A pictogram that must be there.</summary>
    public static Pictogram Pictogram(Fields fields, string key) => Find(fields, fields.Text(key, "GHS07"), key);

    /// <summary>A pictogram that may be missing.</summary>
    public static Pictogram? OptionalPictogram(Fields fields, string key) =>
        fields.OptionalText(key) is { } text ? Find(fields, text, key) : null;

    /// <summary>A signal word that may be missing.</summary>
    public static SignalWord? OptionalSignalWord(Fields fields, string key) =>
        fields.Has(key) ? SignalWord.All.First(w => w.Text == fields.Choice(key, [.. SignalWord.All.Select(a => a.Text)])) : null;

    /// <summary>A statement by its code, wherever it stands; notes it when nobody has a text for it.</summary>
    public StatementCode Find(Fields fields, string text, TextPlace place)
    {
        if (StatementCode.TryParse(text) is { } code && statements.Contains(text))
        {
            return code;
        }

        fields.Problems.Add(place, $"There is no statement '{text}'.", Suggestion.DidYouMean(text, statements));
        return StandIn;
    }

    /// <summary>A list of short names of papers; empty when missing. A paper that nobody makes is noted.</summary>
    public IReadOnlyList<string> Papers(Fields fields, string key) =>
        [.. fields.List(key).Select(item => FindPaper(fields, (item as YamlScalar)?.Text ?? "?", item.Place))];

    private static Pictogram Find(Fields fields, string text, string key)
    {
        if (Hazards.Pictogram.Find(text) is { } pictogram)
        {
            return pictogram;
        }

        fields.Problems.Add(
            fields.PlaceOf(key),
            $"There is no pictogram '{text}'.",
            Suggestion.DidYouMean(text, [.. Hazards.Pictogram.All.Select(p => p.Code)])
        );
        return Hazards.Pictogram.All[0];
    }

    private HazardCategory FindHazard(Fields fields, string code, TextPlace place)
    {
        if (vocabulary.Find(code) is { } hazard)
        {
            return hazard;
        }

        fields.Problems.Add(
            place,
            $"'{code}' is no hazard of hazards.yaml.",
            Suggestion.DidYouMean(code, [.. vocabulary.Categories.Select(c => c.Code)])
        );
        return vocabulary.Categories[0];
    }

    private string FindPaper(Fields fields, string text, TextPlace place)
    {
        if (!papers.Contains(text))
        {
            fields.Problems.Add(place, $"There is no paper '{text}'.", Suggestion.DidYouMean(text, papers));
        }

        return text;
    }
}
