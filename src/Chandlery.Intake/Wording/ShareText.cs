using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Core.Declared;
using Chandlery.Yaml;

namespace Chandlery.Intake.Wording;

/// <summary>Reads shares in the many ways that sheets print them.</summary>
internal static partial class ShareText
{
    private const double PpmInPercent = 10_000;
    private const int LongestText = 80;

    /// <summary>
    /// The share in the form that declarations use; refused when the text is no share. Signs and figures stay as
    /// printed; only words become signs (<c>1 to 5</c>, <c>max. 2</c>), variables go (<c>1 ≤ x &lt; 5</c>) and decimal commas become points.
    /// </summary>
    public static Parsed<string> Parse(string text, SheetWording wording)
    {
        Parsed<ShareReading> read = Read(text, wording, false);
        return read.Success ? Parsed.As(read.Value.Text) : Parsed.Not<string>(read.Reason);
    }

    /// <summary>The share, with what had to be converted.</summary>
    /// <param name="text">The cell's text.</param>
    /// <param name="wording">Words inside ranges.</param>
    /// <param name="isPpm">True where the column's heading says that its figures are parts per million by mass.</param>
    /// <param name="isPercent">True where the column's heading says that they are percent, so that none is in thousands.</param>
    public static Parsed<ShareReading> Read(string text, SheetWording wording, bool isPpm, bool isPercent = false)
    {
        if (text.Length > LongestText)
        {
            return Parsed.Not<ShareReading>($"'{text[..LongestText]}...' is too long for a share.");
        }

        bool ppm = isPpm || Ppm().IsMatch(text);
        bool percent = isPercent || text.Contains('%', StringComparison.Ordinal);
        var doubts = new List<string>();
        string plain = Marks()
            .Replace(Units().Replace(Ppm().Replace(text.ToLowerInvariant(), " "), " "), " ")
            .Replace('\u00a0', ' ')
            .Trim();
        foreach ((string word, string sign) in wording.RangeWords.OrderByDescending(w => w.Key.Length))
        {
            int at = Phrase.IndexOf(word, plain);
            plain = at < 0 ? plain : plain[..at] + sign + plain[(at + word.Length)..];
        }

        plain = plain.Replace("≥", ">=", StringComparison.Ordinal).Replace("≤", "<=", StringComparison.Ordinal).Replace('\u2013', '-');
        plain = plain.Replace('\u2014', '-').Replace("...", "-", StringComparison.Ordinal).Replace("..", "-", StringComparison.Ordinal);
        if (About().Match(plain) is { Success: true } about)
        {
            doubts.Add("the sheet gives the share only roughly");
            plain = plain[about.Length..];
        }

        plain = Variable(plain);
        plain = string.Join(' ', plain.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Trim('(', ')', '[', ']', ' ');
        // A row's number and its share: "3 <5".
        if (TwoFigures().IsMatch(plain))
        {
            return Parsed.Not<ShareReading>($"'{text}' may be two figures: write the share as the sheet means it.");
        }

        if (ppm && Thousands().IsMatch(plain))
        {
            return Parsed.Not<ShareReading>($"'{text}' could hold decimals or thousands: write the share in percent.");
        }

        if (ppm)
        {
            doubts.Add($"converted from '{text}', parts per million");
            plain = Figure().Replace(plain.Replace(',', '.'), m => Percent(m.Value));
        }

        if (!ppm && Thousands().IsMatch(plain) && !RoundThousand().IsMatch(plain) && plain.Contains(',', StringComparison.Ordinal))
        {
            if (!percent && MayBeThousands().IsMatch(plain))
            {
                doubts.Add("a comma before three figures was read as a decimal comma: in thousands the share would be over 100 %");
            }

            plain = plain.Replace(',', '.');
        }

        return DeclaredRange.Parse(plain).Reason is { } wrong
            ? Parsed.Not<ShareReading>(wrong)
            : Parsed.As(new ShareReading(plain.Replace(',', '.') + " %", doubts));
    }

    private static string Percent(string ppm) =>
        Math.Round(double.Parse(ppm, CultureInfo.InvariantCulture) / PpmInPercent, 9).ToString("0.#########", CultureInfo.InvariantCulture);

    // "1 <= x < 5", "x < 5", "c = 3": the letter goes, and the sign before it turns around.
    private static string Variable(string text)
    {
        if (Between().Match(text) is { Success: true } between)
        {
            string low = between.Groups["a"].Value == "<=" ? ">=" : ">";
            return $"{low} {between.Groups["low"].Value} - {between.Groups["b"].Value} {between.Groups["high"].Value}";
        }

        return Leading().Replace(text, "");
    }

    [GeneratedRegex(@"ppm|mg\s*/\s*kg", RegexOptions.IgnoreCase)]
    private static partial Regex Ppm();

    [GeneratedRegex(
        @"\(?\b(?:w\s*/\s*w|m\s*/\s*m|p\s*/\s*p|wt\.?|gew\.?\s*-?|masse-?|wag\.?|weight|by weight|mass)(?=$|[\s%)-])\)?|%",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Units();

    [GeneratedRegex(@"\*+|\(\s*[0-9]\s*\)\s*$|[¹²³†]")]
    private static partial Regex Marks();

    [GeneratedRegex(@"^(?:~|≈|ca\.?|circa|approx\.?|about|env\.?)\s*(?=[0-9<>])")]
    private static partial Regex About();

    [GeneratedRegex(@"^(?<low>[0-9][0-9.,]*)\s*(?<a><=?)\s*(?:x|c|conc\.?|konz\.?|konc\.?)\s*(?<b><=?)\s*(?<high>[0-9][0-9.,]*)$")]
    private static partial Regex Between();

    [GeneratedRegex(@"^(?:x|c|conc\.?|konz\.?|konc\.?)\s*(?:=\s*)?(?=[0-9<>])")]
    private static partial Regex Leading();

    [GeneratedRegex(@"[0-9][.,][0-9]{3}(?![0-9])")]
    private static partial Regex Thousands();

    // No figure in thousands begins with a nought: "0,055".
    [GeneratedRegex(@"(?<![0-9])[1-9][0-9]*,[0-9]{3}(?![0-9])")]
    private static partial Regex MayBeThousands();

    [GeneratedRegex(@"[0-9]+,000(?![0-9])")]
    private static partial Regex RoundThousand();

    [GeneratedRegex(@"^[0-9][0-9.,]*\s+<")]
    private static partial Regex TwoFigures();

    [GeneratedRegex(@"[0-9]+(?:\.[0-9]+)?")]
    private static partial Regex Figure();
}
