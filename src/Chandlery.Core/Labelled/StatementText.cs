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
            language.Statement(code)
            ?? throw new InvalidOperationException($"{language.Name} lacks the statement {code}: its label cannot be printed.");
        string organs = label.Hazard.FirstOrDefault(h => h.Code == code)?.Organs ?? "";
        return WithOrgans(text, organs)
            .Replace(NamesMark, string.Join(", ", label.Eliciting.Select(n => n.Name)), StringComparison.Ordinal);
    }

    /// <summary>A statement with the organs at its end, before the full stop: so every language keeps the words of the law as they are.</summary>
    public static string WithOrgans(string text, string organs) => organs.Length == 0 ? text : $"{text.TrimEnd('.')} ({organs}).";

    /// <summary>The law's statement on ingredients of unknown hazard to waters, as label and safety data sheet print it.</summary>
    public static string UnknownAquatic(Language language, UnknownStatement unknown) =>
        language.Words["unknownAquatic"].Replace("{percent}", language.Figures.AtMostFigure(unknown.Share), StringComparison.Ordinal);

    /// <summary>The law's statement on ingredients of unknown acute toxicity, as label and safety data sheet print it.</summary>
    public static string UnknownToxicity(Language language, UnknownStatement unknown) =>
        language.Words["unknownToxicity"].Replace("{percent}", language.Figures.AtMostFigure(unknown.Share), StringComparison.Ordinal);
}
