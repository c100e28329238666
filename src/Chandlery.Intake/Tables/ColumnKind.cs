using System.Text.RegularExpressions;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Tables;

/// <summary>Tells from a heading what a column holds.</summary>
internal static partial class ColumnKind
{
    public const string Name = "name";
    public const string Cas = "cas";
    public const string Ec = "ec";
    public const string Share = "share";
    public const string From = "from";
    public const string To = "to";
    public const string Old = "old";
    public const string Classes = "classes";
    public const string Statements = "statements";
    public const string Limits = "limits";
    public const string M = "m";
    public const string Ate = "ate";
    public const string Category = "category";
    public const string Ignored = "ignored";

    /// <summary>The kinds of columns that hold a share, or one end of its range.</summary>
    public static readonly string[] OfShares = [Share, From, To];

    private const string LawInForce = "1272/2008";
    private static readonly string[] OfIngredients = [Name, Cas, Ec, Share, Classes, Statements, Limits, M, Ate, Ignored];

    /// <summary>All kinds that a heading of an ingredient table names; several when one column holds several things.</summary>
    /// <param name="heading">The heading, with a line feed where one of its lines ends.</param>
    /// <param name="wording">Headings of columns.</param>
    public static IReadOnlyList<string> Of(string heading, SheetWording wording)
    {
        string plain = Phrase.PlainLined(heading);
        if (wording.Columns[Old].Any(o => Phrase.FindLined(o, plain).At >= 0) && !plain.Contains(LawInForce, StringComparison.Ordinal))
        {
            return [Old];
        }

        if (BoundOf(plain, wording) is { } bound)
        {
            return [bound];
        }

        IReadOnlyList<string> kinds = Of(heading, wording, OfIngredients);
        return kinds.Count == 0 && IsPartsPerMillion(heading) ? [Share] : kinds;
    }

    /// <summary>True for the heading of a column of parts per million by mass.</summary>
    public static bool IsPartsPerMillion(string heading) => PartsPerMillion().IsMatch(heading);

    // A heading that says nothing but "min." or "to", with or without the share's own words and signs.
    private static string? BoundOf(string plain, SheetWording wording)
    {
        string rest = plain;
        foreach (string share in wording.Columns[Share].OrderByDescending(s => s.Length))
        {
            (int at, int length) = Phrase.FindLined(share, rest);
            rest = at < 0 ? rest : rest.Remove(at, length);
        }

        string signs = new([.. rest.Where(c => c is '<' or '>' or '≤' or '≥')]);
        rest = new string([.. rest.Where(char.IsLetter)]);
        if (signs.Length == 1 && (rest.Length == 0 || Of(plain, wording, OfIngredients) is [Share]))
        {
            return signs[0] is '>' or '≥' ? From : To;
        }

        bool Is(string bound) => wording.Columns[bound].Any(b => b.Where(char.IsLetter).SequenceEqual(rest));
        return Is(From) ? From
            : Is(To) ? To
            : null;
    }

    /// <summary>True when the line heads an ingredient table: it names at least two different things a table needs.</summary>
    public static bool IsTableHeading(TextLine line, SheetWording wording)
    {
        string text = line.Text;
        if (text.Length > 200 || HasData(text))
        {
            return false;
        }

        IReadOnlyList<TextLine> phrases = line.Phrases();
        if (phrases.Count == 1)
        {
            phrases = line.ClosePhrases();
            if (phrases.Any(p => Of(p.Text, wording).Count == 0))
            {
                return false;
            }
        }

        HashSet<string> kinds = [.. phrases.SelectMany(p => Of(p.Text, wording))];
        kinds.Remove(Ignored);
        return kinds.Count >= 2 && phrases.Count >= 2 && kinds.Overlaps([Share, From, To, Cas, Classes]);
    }

    /// <summary>True when a text holds a CAS number, a statement's code or a share in figures, as rows do and headings do not.</summary>
    public static bool HasData(string text) => Data().IsMatch(Act().Replace(LawReference().Replace(text, ""), ""));

    /// <summary>True when a text names the law by which classes are given, as the second line of a heading does.</summary>
    public static bool IsOfLaw(string text) => LawReference().IsMatch(text) || text.Contains(LawInForce, StringComparison.Ordinal);

    /// <summary>True when a text holds a CAS number or a statement's code, as nothing but rows of tables does.</summary>
    public static bool IsOfRow(string text) => OfRow().IsMatch(text);

    /// <summary>True when a text holds a CAS number.</summary>
    public static bool HasCas(string text) => CasPattern().IsMatch(text);

    // The longest phrase first, each taking its words away, so that "specific conc. limits" is no share.
    private static List<string> Of(string heading, SheetWording wording, string[] kinds)
    {
        string rest = LawReference().Replace(Phrase.PlainLined(heading), " ");
        var found = new List<string>();
        IEnumerable<(string Kind, string Text)> phrases = wording
            .Columns.Where(c => kinds.Contains(c.Key))
            .SelectMany(c => c.Value.Select(text => (c.Key, text)))
            .OrderByDescending(p => p.text.Length);
        foreach ((string kind, string text) in phrases)
        {
            (int at, int length) = Phrase.FindLined(text, rest);
            if (at >= 0)
            {
                rest = string.Concat(rest.AsSpan(0, at), new string('#', length), rest.AsSpan(at + length));
                found.Add(kind);
            }
        }

        return [.. found.Distinct().Where(k => k != Ignored || found.All(f => f == Ignored))];
    }

    [GeneratedRegex(@"\bppm\b|mg\s*/\s*kg", RegexOptions.IgnoreCase)]
    private static partial Regex PartsPerMillion();

    [GeneratedRegex(@"\((?:ec|eg|ce|eu|we)\)\s*(?:no|nr|n°|nº|n)?\.?(?:\s*[0-9]+/[0-9]+)?", RegexOptions.IgnoreCase)]
    private static partial Regex LawReference();

    [GeneratedRegex(@"\b[0-9]{2,4}/[0-9]{2,4}\b")]
    private static partial Regex Act();

    /// <summary>CAS numbers as printed, also with a wrong check digit.</summary>
    [GeneratedRegex(@"(?<![0-9-])[1-9][0-9]{1,6}-[0-9]{2}-[0-9](?![0-9-])")]
    public static partial Regex CasPattern();

    [GeneratedRegex(@"(?<![0-9-])[1-9][0-9]{1,6}-[0-9]{2}-[0-9](?![0-9-])|\b(?:EUH|H)[0-9]{3}")]
    private static partial Regex OfRow();

    [GeneratedRegex(
        @"\b[1-9][0-9]{1,6}-[0-9]{2}-[0-9]\b|\b(?:EUH|H)[0-9]{3}|[0-9]\s*%?\s*[-\u2013]\s*<?\s*[0-9]|[<>≤≥]=?\s*[0-9]|[0-9][.,][0-9]|[0-9]\s?(?:%|mg)"
    )]
    private static partial Regex Data();
}
