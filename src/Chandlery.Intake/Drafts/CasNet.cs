using System.Text.RegularExpressions;
using Chandlery.Core.Declared;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Tables;

namespace Chandlery.Intake.Drafts;

/// <summary>
/// Catches every CAS number that a document prints, on any page, also where a line's end or blanks part it, so that none is missing
/// from the draft without a word.
/// </summary>
internal static partial class CasNet
{
    private const double LinesDown = 4;
    private const double AsideMm = 6;
    private const int MostOpenNumbers = 1000;

    /// <summary>What to say of numbers that no ingredient has, and of ingredients with the same number.</summary>
    /// <param name="ingredients">The draft's ingredients.</param>
    /// <param name="composition">Lines of the composition, in which even a number with a wrong check digit counts.</param>
    /// <param name="pages">All pages.</param>
    public static IEnumerable<string> Missing(
        IReadOnlyList<DraftIngredient> ingredients,
        IReadOnlyList<TextLine> composition,
        IReadOnlyList<SheetPage> pages
    )
    {
        HashSet<string> drafted = [.. ingredients.Select(i => i.Cas?.Value ?? "")];
        var told = new HashSet<string>();
        foreach (string cas in composition.SelectMany(l => In(l.Text)).Where(c => !drafted.Contains(c) && told.Add(c)))
        {
            yield return $"section 3 prints the CAS number {cas}, which no drafted row has: is a row missing?";
        }

        foreach ((string cas, int page) in pages.SelectMany(p => On(p).Select(c => (c, p.Number))))
        {
            if (CasNumber.Parse(cas).Success && !drafted.Contains(cas) && told.Add(cas))
            {
                yield return $"page {page} prints the CAS number {cas}, which no drafted row has: is a row missing?";
            }
        }

        foreach (IGrouping<string, DraftIngredient> twice in ingredients.Where(i => i.Cas is not null).GroupBy(i => i.Cas!.Value))
        {
            if (twice.Count() > 1)
            {
                yield return $"the CAS number {twice.Key} is drafted {twice.Count()} times";
            }
        }
    }

    private static IEnumerable<string> In(string text) =>
        ColumnKind.CasPattern().Matches(Registered().Replace(text, " ")).Select(m => m.Value);

    private static IEnumerable<string> On(SheetPage page)
    {
        IReadOnlyList<TextLine> lines = TextLine.Of(page.Number, page.Words);
        IEnumerable<string> inLines = lines.SelectMany(l => In(l.Text).Concat(In(Spaced().Replace(l.Text, "-"))));
        return inLines.Concat(page.Words.Where(w => Beginning().IsMatch(w.Text)).Take(MostOpenNumbers).SelectMany(w => Rejoined(w, page)));
    }

    // "4180-" over "23-8", "4180-23-" over "8": whatever stands below and would complete it.
    private static IEnumerable<string> Rejoined(Word word, SheetPage page)
    {
        string start = Beginning().Match(word.Text).Value;
        foreach (Word below in page.Words)
        {
            double down = below.Box.Bottom - word.Box.Bottom;
            bool near =
                down > 0
                && down < LinesDown * word.TypeSize
                && below.Box.Left < word.Box.Right + AsideMm
                && below.Box.Right > word.Box.Left - AsideMm;
            if (near && Rest().Match(below.Text) is { Success: true } rest && In(start + rest.Value).FirstOrDefault() is { } cas)
            {
                if (CasNumber.Parse(cas).Success)
                {
                    yield return cas;
                }
            }
        }
    }

    [GeneratedRegex(@"(?<=[0-9])\s*-\s*(?=[0-9])")]
    private static partial Regex Spaced();

    [GeneratedRegex(@"(?<![0-9-])[1-9][0-9]{1,6}(?:-(?:[0-9]{2}-?)?)?$")]
    private static partial Regex Beginning();

    [GeneratedRegex(@"^-?(?:[0-9]{2}-)?[0-9](?![0-9-])")]
    private static partial Regex Rest();

    [GeneratedRegex(@"(?<![0-9])0[0-9]-[0-9]{10}-[0-9]{2}(?:-[0-9xX]{4})?|(?<![0-9-])[0-9]{3}-[0-9]{3}-[0-9]{2}-[0-9X](?![0-9-])")]
    private static partial Regex Registered();
}
