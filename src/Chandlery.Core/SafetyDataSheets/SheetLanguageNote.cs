using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>What must stand on the first page of a sheet that is English in parts.</summary>
internal static class SheetLanguageNote
{
    /// <summary>The note; null for a sheet that is in one language. Call when the sheet's texts have been asked for.</summary>
    public static string? Of(SheetContext context, SheetWords words)
    {
        IReadOnlyList<string> english = [.. context.Texts.InEnglish];
        if (english.Count == 0)
        {
            return null;
        }

        string[] numbers = [.. words.Headings.Keys.Where(english.Contains)];
        return context.Texts.HasTranslation
            ? context.Texts.Phrase(
                SheetPhrase.SomeTextIsEnglish,
                ("language", context.Language.Name),
                ("subsections", string.Join(", ", numbers)),
                ("clause", context.Texts.Cited(context.Rules.LanguageClause.Text))
            )
            : context.Texts.Phrase(
                SheetPhrase.FreeTextIsEnglish,
                ("language", context.Language.Name),
                ("clause", context.Texts.Cited(context.Rules.LanguageClause.Text))
            );
    }
}
