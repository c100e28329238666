using System.Text.RegularExpressions;

namespace Chandlery.Intake.Wording;

/// <summary>Compares phrases without regard to capitals, dots and spacing.</summary>
internal static partial class Phrase
{
    /// <summary>Small letters, single blanks, straight apostrophes, no dots, colons or stars.</summary>
    public static string Plain(string text) =>
        Blanks().Replace(Noise().Replace(text.ToLowerInvariant().Replace('\u2019', '\''), ""), " ").Trim();

    // A table of our own: without ICU, as this program runs, the framework's normalisation leaves all letters as they are.
    private const string Accented = "àáâäãåçèéêëìíîïñòóôöõùúûüýÿąćęłńśźż";
    private const string WithoutAccents = "aaaaaaceeeeiiiinooooouuuuyyacelnszz";

    // Those who recognise the letters of a scan leave accents out.
    private static char Bare(char letter) =>
        letter < '\u00c0' || Accented.IndexOf(letter, StringComparison.Ordinal) is not (>= 0 and var at) ? letter : WithoutAccents[at];

    private static string Bare(string text) => text.Any(c => c >= '\u00c0') ? string.Concat(text.Select(Bare)) : text;

    /// <summary>True when the plain text holds the plain phrase as whole words.</summary>
    public static bool IsIn(string phrase, string text) => IndexOf(phrase, text) >= 0;

    /// <summary>Where the phrase stands in the text as whole words; -1 when it does not.</summary>
    public static int IndexOf(string phrase, string text)
    {
        for (int at = text.IndexOf(phrase, StringComparison.Ordinal); at >= 0; at = text.IndexOf(phrase, at + 1, StringComparison.Ordinal))
        {
            int end = at + phrase.Length;
            bool startsWord = at == 0 || !char.IsLetterOrDigit(text[at - 1]) || !char.IsLetterOrDigit(phrase[0]);
            bool endsWord = end == text.Length || !char.IsLetterOrDigit(text[end]) || !char.IsLetterOrDigit(phrase[^1]);
            if (startsWord && endsWord)
            {
                return at;
            }
        }

        return -1;
    }

    /// <summary>The same as <see cref="Plain"/>, with a line feed where a line ends.</summary>
    public static string PlainLined(string text) => string.Join('\n', text.Split('\n').Select(Plain));

    /// <summary>
    /// Where the phrase stands in the text as whole words, and how long it is there; -1 when it does not. A line's end counts as a blank,
    /// or as nothing where a narrow column broke a word, with or without a hyphen.
    /// </summary>
    public static (int At, int Length) FindLined(string phrase, string text)
    {
        for (int at = 0; at < text.Length; at++)
        {
            bool startsWord = at == 0 || !char.IsLetterOrDigit(text[at - 1]) || !char.IsLetterOrDigit(phrase[0]);
            int length = startsWord ? LengthAt(phrase, text, at) : -1;
            int end = at + length;
            if (length > 0 && (end == text.Length || !char.IsLetterOrDigit(text[end]) || !char.IsLetterOrDigit(phrase[^1])))
            {
                return (at, length);
            }
        }

        return (-1, 0);
    }

    // How much of the text the phrase takes from here on; -1 when it does not stand here.
    private static int LengthAt(string phrase, string text, int from)
    {
        int at = from;
        foreach (char wanted in phrase)
        {
            if (at > from && at < text.Length && text[at] == '\n' && wanted != ' ')
            {
                at++;
            }
            else if (at > from && at + 1 < text.Length && text[at] == '-' && text[at + 1] == '\n' && wanted is not ('-' or ' '))
            {
                at += 2;
            }

            if (at >= text.Length || (Bare(text[at]) != Bare(wanted) && !(wanted == ' ' && text[at] == '\n')))
            {
                return -1;
            }

            at++;
        }

        return at - from;
    }

    /// <summary>True when the text is one of the phrases.</summary>
    public static bool IsOneOf(IEnumerable<string> phrases, string text)
    {
        string plain = Bare(Plain(text));
        return phrases.Any(p => Bare(p) == plain);
    }

    /// <summary>True when the text holds any of the phrases.</summary>
    public static bool AnyIn(IEnumerable<string> phrases, string text)
    {
        string plain = Bare(Plain(text));
        return phrases.Any(p => IsIn(Bare(p), plain));
    }

    /// <summary>
    /// Takes a label off the start of a text: <c>Product name : Sea Fog</c> gives <c>Sea Fog</c>. Null when the text
    /// does not start with one of the labels; the longest label wins.
    /// </summary>
    public static string? AfterLabel(string text, IEnumerable<string> labels)
    {
        foreach (string label in labels.OrderByDescending(l => l.Length))
        {
            int at = 0;
            int matched = 0;
            while (at < text.Length && matched < label.Length)
            {
                char c = char.ToLowerInvariant(text[at]);
                if (Bare(c) == Bare(label[matched]))
                {
                    matched++;
                }
                else if (c is not ('.' or ':' or '*' or ' '))
                {
                    break;
                }

                at++;
            }

            // "Company/undertaking" and "Supplier's" are other words than the label.
            if (
                matched == label.Length
                && (at == text.Length || text[at] is ' ' or ':' or '.' or '*' or '-' or '\u2013' or '=' or '#' or '(')
            )
            {
                return text[at..].TrimStart(' ', ':', '.', '*', '-', '\u2013', '=', '#').Trim();
            }
        }

        return null;
    }

    [GeneratedRegex(@"[.:*]")]
    private static partial Regex Noise();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
