using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Intake.Drafts;
using Chandlery.Workbench.Forms;
using Chandlery.Yaml;

namespace Chandlery.Workbench.Sheets;

/// <summary>
/// Reads back what the intake wrote beside the values of a draft: where each stands in the PDF, and what is doubtful. The maker's
/// answers are kept in the same text, so that a review can be left and taken up again.
/// </summary>
internal static partial class DraftMarks
{
    /// <summary>Where the values stand.</summary>
    /// <param name="yaml">The draft's text.</param>
    /// <param name="documents">Names of its PDFs, in order.</param>
    public static IReadOnlyList<ReadMark> Places(string yaml, List<string> documents)
    {
        YamlMap? map = Read(yaml);
        return
        [
            .. Lines(yaml)
                .Select(l => (l.Number, Match: PlaceNote().Match(l.Text)))
                .Where(l => l.Match.Success)
                .Select(l => new ReadMark(
                    FieldPath.At(map, l.Number, 0),
                    Math.Max(0, documents.IndexOf(l.Match.Groups["file"].Value.Trim())),
                    int.Parse(l.Match.Groups["page"].Value, CultureInfo.InvariantCulture),
                    [.. l.Match.Groups["box"].Value.Split(", ").Select(n => double.Parse(n, CultureInfo.InvariantCulture))]
                )),
        ];
    }

    /// <summary>What is doubtful and not answered yet.</summary>
    public static IReadOnlyList<Doubt> Doubts(string yaml)
    {
        YamlMap? map = Read(yaml);
        List<(int Number, string Text)> lines = [.. Lines(yaml)];
        return
        [
            .. lines
                .Where(l => l.Text.TrimStart().StartsWith(DraftYaml.Mark, StringComparison.Ordinal))
                .Select(l =>
                    Of(
                        map,
                        l.Number,
                        l.Text.TrimStart()[DraftYaml.Mark.Length..],
                        lines.Find(next => next.Number > l.Number && !IsNote(next.Text))
                    )
                ),
        ];
    }

    /// <summary>The text without the mark of a doubt that was answered.</summary>
    /// <exception cref="FormatException">There is no such mark.</exception>
    public static string Without(string yaml, string what)
    {
        string[] lines = yaml.Split('\n');
        int at = Array.FindIndex(lines, l => l.TrimStart() == DraftYaml.Mark + what);
        return at < 0 ? throw new FormatException("There is no such doubt.") : string.Join('\n', lines.Where((_, i) => i != at));
    }

    private static bool IsNote(string line) => line.Trim().Length == 0 || line.TrimStart().StartsWith('#');

    private static Doubt Of(YamlMap? map, int line, string what, (int Number, string Text) next)
    {
        string? needs = MissingField().Match(what) is { Success: true } missing ? missing.Groups["key"].Value : null;

        // A doubt of what is missing, or of the sheet as a whole, stands above a line that it does not speak of.
        bool isOfNext = needs is null && next.Text is not null && PlaceNote().IsMatch(next.Text);
        return new Doubt(line, what, isOfNext ? FieldPath.At(map, next.Number, 0) : null, needs);
    }

    private static YamlMap? Read(string yaml) => YamlText.Read(yaml, "", new Problems());

    private static IEnumerable<(int Number, string Text)> Lines(string yaml) => yaml.Split('\n').Select((text, i) => (i + 1, text));

    [GeneratedRegex(@"# (?<file>.*?)page (?<page>\d+) \[(?<box>-?[\d.]+, -?[\d.]+, -?[\d.]+, -?[\d.]+)\]")]
    private static partial Regex PlaceNote();

    [GeneratedRegex("was not found; add '(?<key>[A-Za-z]+):'")]
    private static partial Regex MissingField();
}
