using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>Finds categories and limits in the phrases of an IFRA certificate.</summary>
internal sealed class IfraMarks
{
    private const string Category = "(?:1[0-2]|[1-9])(?:[ ]?\\.?[ ]?[A-Fa-f])?(?![0-9A-Za-z]|[.,][0-9])";
    private readonly SheetWording wording;
    private readonly Regex categories;
    private readonly Regex limits;

    public IfraMarks(SheetWording wording)
    {
        this.wording = wording;
        var options = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant;
        string words = Alternatives(wording.Lists["category"].Concat(wording.Columns["category"]));
        string special = Alternatives(wording.Lists["notRestricted"].Concat(wording.Lists["notPermitted"]));
        categories = new Regex(
            $@"^(?:(?:ifra\s+)?(?:{words})\.?\s*:?\s*)?(?<list>{Category}(?:\s*[,;/&+]\s*{Category})*)(?<open>\s*[,;/&+])?(?![0-9]*\s*%)",
            options
        );
        limits = new Regex(
            $@"(?<!\w)(?:(?<v>[0-9]+(?:[.,][0-9]+)?)\s*%|%\s*(?<v>[0-9]+(?:[.,][0-9]+)?)|(?<![0-9.,])(?<v>[0-9]+[.,][0-9]+)(?![.,]?[0-9])|(?<word>{special}))(?!\w)",
            options
        );
    }

    /// <summary>A pattern for any of the phrases, the longest first.</summary>
    public static string Alternatives(IEnumerable<string> phrases) =>
        string.Join(
            '|',
            phrases
                .Distinct()
                .OrderByDescending(p => p.Length)
                .Select(p => Regex.Escape(p).Replace(@"\ ", @"\s+", StringComparison.Ordinal))
        );

    /// <summary>The marks of a phrase: categories at its start, limits anywhere.</summary>
    public IEnumerable<IfraMark> Of(TextLine phrase)
    {
        string text = phrase.Text;
        int after = 0;
        if (categories.Match(text) is { Success: true } list && !StartsWithLimit(text))
        {
            after = list.Length;
            string[] codes =
            [
                .. Regex
                    .Matches(list.Groups["list"].Value, Category, RegexOptions.CultureInvariant)
                    .Select(m => new string([.. m.Value.Where(char.IsLetterOrDigit)]).ToUpperInvariant()),
            ];
            yield return new IfraMark(codes, null, phrase.Frame, list.Groups["open"].Success);
        }

        foreach (Match match in limits.Matches(text[after..]))
        {
            yield return new IfraMark([], LimitOf(match), phrase.Frame, false);
        }
    }

    private bool StartsWithLimit(string text) => limits.Match(text) is { Success: true, Index: 0 };

    /// <summary>The limit that a text says; null when it says none.</summary>
    public string? LimitIn(string text) => limits.Match(text) is { Success: true } match ? LimitOf(match) : null;

    private string LimitOf(Match match) =>
        match.Groups["word"].Success
            ? wording.Lists["notRestricted"].Contains(Phrase.Plain(match.Groups["word"].Value))
                ? "not restricted"
                : "not permitted"
            : double.Parse(match.Groups["v"].Value.Replace(',', '.'), CultureInfo.InvariantCulture).ToString(CultureInfo.InvariantCulture);
}
