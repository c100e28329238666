using System.Text.RegularExpressions;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>Reads the head of a document: names, number, version and date, each by its label.</summary>
internal sealed partial class HeadReader(SheetWording wording, LabelFinder labels, int document)
{
    /// <summary>What the head says.</summary>
    /// <param name="identification">Lines that name product and supplier.</param>
    /// <param name="all">All lines.</param>
    public SheetHead Read(IReadOnlyList<TextLine> identification, IReadOnlyList<TextLine> all) =>
        new(
            Text(identification, "name", t => t.Any(char.IsLetterOrDigit)),
            Text(identification, "supplier", t => t.Any(char.IsLetter)),
            Text(all, "document", t => t.Any(char.IsAsciiDigit) && DateText.Find(t, wording) is null),
            Version(all),
            Date(all, "revised") ?? Date(all, "issued")
        );

    private Found<string>? Text(IReadOnlyList<TextLine> lines, string kind, Func<string, bool> isValue) =>
        labels.All(lines, kind).FirstOrDefault(l => isValue(l.Text) && !l.Text.EndsWith(':') && !Numbered().IsMatch(l.Text)) is { } found
            ? new Found<string>(found.Text, document, found.Page, found.Box, Doubts(found))
            : null;

    private static List<string> Doubts(Labelled found) =>
        found.IsUnder ? ["it stands under its label, not beside it"]
        : found.IsClose ? ["nothing but a blank parts it from its label, or it runs over several lines"]
        : [];

    private Found<string>? Version(IReadOnlyList<TextLine> all)
    {
        foreach (Labelled found in labels.All(all, "version"))
        {
            if (VersionNumber().Match(found.Text) is { Success: true } number && DateText.Find(found.Text, wording) is null)
            {
                return new Found<string>(number.Value, document, found.Page, found.Box, found.IsUnder ? Doubts(found) : []);
            }
        }

        return null;
    }

    // The first date whose label says so; others of the same kind that differ are named.
    private Found<DateOnly>? Date(IReadOnlyList<TextLine> all, string kind)
    {
        Found<DateOnly>? first = null;
        foreach (Labelled value in labels.All(all, kind).Where(v => DateText.IsAtStart(v.Text, wording)))
        {
            PrintedDay printed = DateText.Find(value.Text, wording)!;
            if (first is null)
            {
                List<string> doubts =
                [
                    .. value.IsUnder ? Doubts(value) : [],
                    .. printed.Doubt is { } doubt ? [doubt] : Array.Empty<string>(),
                ];
                first = new Found<DateOnly>(printed.Day, document, value.Page, value.Box, doubts);
            }
            else if (first.Value != printed.Day && first.Doubts.Count == 0)
            {
                first = first.Doubted($"the document also gives '{value.Text}' under such a label");
            }
        }

        return first;
    }

    [GeneratedRegex(@"^[0-9]{1,2}\.[0-9]+\.?\s+\p{L}")]
    private static partial Regex Numbered();

    [GeneratedRegex(@"^[A-Za-z]{0,2}[0-9]+(?:[.,/-][0-9A-Za-z]+)*")]
    private static partial Regex VersionNumber();
}
