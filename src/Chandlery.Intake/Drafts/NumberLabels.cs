using System.Text.RegularExpressions;
using Chandlery.Intake.Tables;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>Takes the numbers of a substance off a text, and the labels that stand before them.</summary>
/// <param name="wording">Labels, and headings of columns.</param>
internal sealed partial class NumberLabels(SheetWording wording)
{
    private const char Taken = '\u0001';
    private const int LongestShort = 3;
    private static readonly string[] Kinds = [ColumnKind.Cas, ColumnKind.Ec];
    private static readonly string[] Labels = ["casNumber", "ecNumber", "ignored"];

    private readonly List<Regex> patterns =
    [
        .. Longest(Labels.SelectMany(k => wording.Labels[k])).Select(l => Pattern(Labelling(l))),
        .. Longest(Kinds.SelectMany(k => wording.Columns[k])).Select(l => Pattern(BeforeNumber(l))),
    ];

    private readonly HashSet<string> shortOnes =
    [
        .. Kinds.SelectMany(k => wording.Columns[k]).Where(l => l.Length <= LongestShort).Select(l => l.ToUpperInvariant()),
    ];

    /// <summary>True for a word that labels numbers and is short enough to be taken for a part of a name: "EC", "CAS".</summary>
    public bool IsShort(string word) => shortOnes.Contains(word);

    /// <summary>The text without CAS, EC, REACH and index numbers and their labels.</summary>
    public string Without(string text)
    {
        text = WithoutNumbers(text);
        foreach (Regex label in patterns)
        {
            text = label.Replace(text, " ");
        }

        return LoneMark().Replace(text.Replace(Taken, ' '), " ");
    }

    /// <summary>The text without CAS, EC, REACH and index numbers. A mark stays where each stood, which tells the label before it.</summary>
    public static string WithoutNumbers(string text)
    {
        string mark = $"{Taken}";
        return EcPattern().Replace(ColumnKind.CasPattern().Replace(OtherNumbers().Replace(text, mark), mark), mark);
    }

    private static IEnumerable<string> Longest(IEnumerable<string> labels) => labels.Distinct().OrderByDescending(l => l.Length);

    private static Regex Pattern(string pattern) => new(pattern, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static string Loose(string label) =>
        string.Concat(label.Select(c => c == ' ' ? @"\.?[ ]*" : Regex.Escape(c.ToString()) + @"\.?"));

    // Any heading of a number's column right before a number.
    private static string BeforeNumber(string heading) => $@"(?<![\p{{L}}0-9]){Loose(heading)}[ ]*[:#]*[ ]*(?={Taken})";

    // A label with its colon, or where nothing but a mark or the line's end follows; dots may stand anywhere in it.
    private static string Labelling(string label) =>
        $@"(?<![\p{{L}}0-9]){Loose(label)}(?:[ ]*[:#]+|(?=[ ]*(?:$|[\n,;/)|\u00b7\u2022{Taken}])))";

    /// <summary>EC numbers as printed, also with a wrong check digit.</summary>
    [GeneratedRegex(@"(?<![0-9-])[0-9]{3}-[0-9]{3}-[0-9](?![0-9-])")]
    public static partial Regex EcPattern();

    /// <summary>REACH registration and index numbers, which hold what looks like EC numbers.</summary>
    [GeneratedRegex(@"(?<![0-9])0[0-9]-[0-9]{10}-[0-9]{2}(?:-[0-9xX]{4})?|(?<![0-9-])[0-9]{3}-[0-9]{3}-[0-9]{2}-[0-9X](?![0-9-])")]
    public static partial Regex OtherNumbers();

    // What parts two numbers and stays when they are gone.
    [GeneratedRegex(@"(?<=^|\s)[\u00b7\u2022|](?=\s|$)", RegexOptions.Multiline)]
    private static partial Regex LoneMark();
}
