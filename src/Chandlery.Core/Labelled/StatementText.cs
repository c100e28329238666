using Chandlery.Core.Classified;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;

namespace Chandlery.Core.Labelled;

/// <summary>Turns codes into the words of a language.</summary>
public static class StatementText
{
    private const string NamesMark = "{names}";

    /// <summary>The statement as it stands on the label, with the names of substances filled in.</summary>
    /// <exception cref="InvalidOperationException">The language lacks the statement; it must not be printed in another one.</exception>
    public static string Printed(Language language, StatementCode code, LabelElements label)
    {
        string text =
            language.Statement(code, label.Precautionary.FirstOrDefault(p => p.Code == code)?.Protects ?? Protection.None)
            ?? throw new InvalidOperationException($"{language.Name} lacks the statement {code}: its label cannot be printed.");
        string organs = label.Hazard.FirstOrDefault(h => h.Code == code)?.Organs ?? "";
        return WithNames(WithOrgans(text, organs), label.Eliciting.Select(n => n.Name));
    }

    /// <summary>The line that names substances, in the word order of the language.</summary>
    public static string Contains(Language language, IEnumerable<string> names) => WithNames(language.Words["contains"], names);

    /// <summary>Those of a label's statements that the language has no text for.</summary>
    public static IEnumerable<StatementCode> Lacking(Language language, LabelElements label) =>
        CodesOf(label).Where(code => !language.Has(code));

    /// <summary>Those of a label's statements whose text is not sure, by where it comes from.</summary>
    public static IEnumerable<IGrouping<TextOrigin, StatementCode>> Unsure(Language language, LabelElements label) =>
        CodesOf(label).Where(code => !language.OriginOf(code).IsVerified).GroupBy(language.OriginOf);

    /// <summary>A statement with the organs at its end, before the full stop: so every language keeps the words of the law as they are.</summary>
    public static string WithOrgans(string text, string organs) => organs.Length == 0 ? text : $"{text.TrimEnd('.')} ({organs}).";

    /// <summary>The law's statement on ingredients of unknown hazard to waters, as label and safety data sheet print it.</summary>
    public static string UnknownAquatic(Language language, UnknownStatement unknown) =>
        language.Words["unknownAquatic"].Replace("{percent}", language.Figures.AtMostFigure(unknown.Share), StringComparison.Ordinal);

    /// <summary>The law's statement on ingredients of unknown acute toxicity, as label and safety data sheet print it.</summary>
    public static string UnknownToxicity(Language language, UnknownStatement unknown) =>
        language.Words["unknownToxicity"].Replace("{percent}", language.Figures.AtMostFigure(unknown.Share), StringComparison.Ordinal);

    private static IEnumerable<StatementCode> CodesOf(LabelElements label) =>
        label.Hazard.Concat(label.Supplemental).Concat(label.Precautionary).Select(s => s.Code);

    private static string WithNames(string text, IEnumerable<string> names) =>
        text.Contains(NamesMark, StringComparison.Ordinal)
            ? text.Replace(NamesMark, string.Join(", ", names), StringComparison.Ordinal)
            : text;
}
