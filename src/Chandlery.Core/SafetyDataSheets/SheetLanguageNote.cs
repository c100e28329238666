using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>What must stand on the first page of a paper that is English in parts. Make it when the sheet's texts have been asked for.</summary>
public sealed class SheetLanguageNote
{
    private readonly SheetContext context;
    private readonly IReadOnlyList<string> english;

    internal SheetLanguageNote(SheetContext context, SheetWords words)
    {
        this.context = context;
        HashSet<string> found = [.. context.Texts.InEnglish];
        english = [.. words.Headings.Keys.Where(found.Contains)];
    }

    /// <summary>The note of the whole sheet; null when it is in one language.</summary>
    public string? Whole => Of(english);

    /// <summary>The note of a paper that shows some of the sheet's subsections; null when they are in one language.</summary>
    /// <param name="subsections">Numbers of what it shows.</param>
    public string? Of(IEnumerable<string> subsections)
    {
        string[] shown = [.. english.Intersect(subsections)];
        if (shown.Length == 0)
        {
            return null;
        }

        return context.Texts.HasTranslation
            ? context.Texts.Phrase(
                SheetPhrase.SomeTextIsEnglish,
                ("language", context.Language.Name),
                ("subsections", string.Join(", ", shown)),
                ("clause", context.Texts.Cited(context.Rules.LanguageClause.Text))
            )
            : context.Texts.Phrase(
                SheetPhrase.FreeTextIsEnglish,
                ("language", context.Language.Name),
                ("clause", context.Texts.Cited(context.Rules.LanguageClause.Text))
            );
    }
}
