using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Tables;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>Finds categories and limits in the phrases of an IFRA certificate.</summary>
internal sealed class IfraMarks
{
    // "5A", "5 A/B/C", "5 (A-D)", "10 A and B"; between two whole categories a hyphen means those between them only where both have letters.
    private const string And = "\\s+(?:and|und|et|y|e|en|i)\\s+";
    private const string Letters = "[A-Fa-f](?![A-Za-z])(?:(?:\\s*[,/&+\u2013-]\\s*|" + And + ")[A-Fa-f](?![0-9A-Za-z]))*";
    private const string Number = "(?:1[0-2]|[1-9])";
    private const string Lettered = Number + "[ ]?\\.?[ ]?\\(?" + Letters + "\\)?";
    private const string Category = "(?:" + Lettered + "(?:\\s*[\u2013-]\\s*" + Lettered + ")?|" + Number + ")(?![0-9A-Za-z]|[.,][0-9])";
    private static readonly Regex CategoryToken = new("(?<n>[0-9]+)|(?<l>[A-F])|(?<to>[\u2013-])", RegexOptions.CultureInvariant);
    private const string NotRestricted = "not restricted";
    private const string NotPermitted = "not permitted";
    private readonly SheetWording wording;
    private readonly Regex categories;
    private readonly Regex limits;

    public IfraMarks(SheetWording wording)
    {
        this.wording = wording;
        var options = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant;
        string words = Alternatives(wording.Lists["category"].Concat(wording.Columns[ColumnKind.Category]));
        string special = Alternatives(wording.Lists["notRestricted"].Concat(wording.Lists["notPermitted"]));
        categories = new Regex(
            $@"^(?:(?:ifra\s+)?(?:{words})\.?\s*:?\s*)?(?<list>{Category}(?:(?:\s*[,;/&+]\s*|{And}){Category})*)(?<open>\s*[,;/&+])?(?![0-9]*\s*%)",
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

    /// <summary>The marks of a phrase: categories at its start, or behind nothing but a limit; limits anywhere.</summary>
    public IEnumerable<IfraMark> Of(TextLine phrase)
    {
        string text = phrase.Text;
        if (
            limits.Match(text) is { Success: true, Index: 0 } first
            && text[first.Length..].Trim() is { Length: > 0 } rest
            && categories.Match(rest) is { Success: true } behind
            && behind.Length == rest.Length
        )
        {
            yield return new IfraMark([], LimitOf(first), phrase.Frame, false);
            yield return new IfraMark([.. CodesOf(behind)], null, phrase.Frame, behind.Groups["open"].Success);
            yield break;
        }

        int after = 0;
        if (categories.Match(text) is { Success: true } list && !StartsWithLimit(text))
        {
            after = list.Length;
            string[] codes = [.. CodesOf(list)];
            yield return new IfraMark(codes, null, phrase.Frame, list.Groups["open"].Success);
        }

        foreach (Match match in limits.Matches(text[after..]))
        {
            yield return new IfraMark([], LimitOf(match), phrase.Frame, false);
        }
    }

    private static IEnumerable<string> CodesOf(Match list) =>
        Codes(Regex.Replace(list.Groups["list"].Value, And, ",", RegexOptions.IgnoreCase));

    // "5 A-C, 6" is 5A, 5B, 5C and 6.
    private static IEnumerable<string> Codes(string list)
    {
        string number = "";
        char last = '\0';
        bool isRange = false;
        foreach (Match token in CategoryToken.Matches(list.ToUpperInvariant()))
        {
            if (token.Groups["to"].Success)
            {
                isRange = true;
            }
            else if (token.Groups["n"].Success)
            {
                if (number.Length > 0 && last == '\0')
                {
                    yield return number;
                }

                (number, last) = (token.Value, isRange ? last : '\0');
            }
            else
            {
                char letter = token.Value[0];
                for (char between = (char)(last + 1); isRange && last != '\0' && between < letter; between++)
                {
                    yield return number + between;
                }

                (last, isRange) = (letter, false);
                yield return number + letter;
            }
        }

        if (number.Length > 0 && last == '\0')
        {
            yield return number;
        }
    }

    private bool StartsWithLimit(string text) => limits.Match(text) is { Success: true, Index: 0 };

    /// <summary>The limit that a text says; null when it says none.</summary>
    public string? LimitIn(string text) => limits.Match(text) is { Success: true } match ? LimitOf(match) : BrokenIn(text);

    // Nothing but a phrase whose words a narrow column broke: "not restr icted".
    private string? BrokenIn(string text)
    {
        string solid = Solid(Phrase.Plain(text));
        return wording.Lists["notRestricted"].Any(p => Solid(p) == solid) ? NotRestricted
            : wording.Lists["notPermitted"].Any(p => Solid(p) == solid) ? NotPermitted
            : null;
    }

    private static string Solid(string text) => string.Concat(text.Split(' ', '-'));

    private string LimitOf(Match match) =>
        match.Groups["word"].Success
            ? wording.Lists["notRestricted"].Contains(Phrase.Plain(match.Groups["word"].Value))
                ? NotRestricted
                : NotPermitted
            : double.Parse(match.Groups["v"].Value.Replace(',', '.'), CultureInfo.InvariantCulture).ToString(CultureInfo.InvariantCulture);
}
