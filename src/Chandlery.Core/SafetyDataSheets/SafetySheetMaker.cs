using System.Globalization;
using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Core.SafetyDataSheets.Parts;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>Lays out a candle's safety data sheet: the law's rows that stand, sentences filled in and parts computed.</summary>
public sealed class SafetySheetMaker
{
    private const string LastSection = "16";
    private static readonly int[] LabelWidths = [34, 66];
    private readonly SheetContext context;
    private readonly SheetWords words;
    private readonly IReadOnlyList<SheetRow> rows;

    private SafetySheetMaker(Assessment assessment, Language language, SheetWords words, Lawbook lawbook)
    {
        this.words = words;
        context = new SheetContext(assessment, language, words, lawbook);
        SheetConditions holding = SheetHolding.Of(context);
        rows = [.. lawbook.SheetSentences.RowsFor(context.Rules).Where(r => r.Stands(holding))];
    }

    /// <summary>The sheet, or null with a problem when it would not be lawful.</summary>
    /// <param name="assessment">The candle.</param>
    /// <param name="language">Language of headings and statements.</param>
    /// <param name="lawbook">Law and words.</param>
    /// <param name="revision">Number of the revision, from 1.</param>
    /// <param name="problems">Collects what is wrong.</param>
    public static SafetySheet? Make(Assessment assessment, Language language, Lawbook lawbook, int revision, Problems problems)
    {
        SheetWords? words = lawbook.SheetWords.Find(language.Code);
        if (words is null)
        {
            problems.Add(assessment.Candle.Place, $"There are no headings of the safety data sheet in {language.Name}.");
            return null;
        }

        if (assessment.Edition.SafetySheet.EmergencyNumber is { Needed: true } needed && assessment.Maker.EmergencyTelephone is null)
        {
            problems.Add(
                assessment.Maker.Place,
                $"Section 1.4 of a safety data sheet needs an emergency telephone number ({needed.Clause}).",
                "Add 'emergencyTelephone' to the maker: the official advisory body's number of the place of sale, or a service of your own with its hours."
            );
            return null;
        }

        return new SafetySheetMaker(assessment, language, words, lawbook).Make(revision);
    }

    private SafetySheet Make(int revision)
    {
        Assessment a = context.Assessment;
        List<SheetSection> sections =
        [
            .. words
                .Headings.Keys.Where(k => k.Contains('.', StringComparison.Ordinal))
                .Where(k => !context.Rules.Without.Contains(k))
                .GroupBy(k => k.Split('.')[0])
                .Select(s => Section(s.Key, [.. s.Select(n => new SheetSubsection(n, Heading(n), Blocks(n)))])),
            Section(LastSection, [new SheetSubsection(LastSection, "", Blocks(LastSection))]),
        ];
        var languages = new SheetLanguageNote(context, words);
        return new SafetySheet
        {
            Language = context.Language,
            Words = words,
            Product = a.Candle.Name,
            Maker = a.Maker.Name,
            Format = context.Texts.Told(context.Rules.Format),
            Revision = revision,
            Revised = a.AsOf,
            Sections = sections,
            Duty = SheetDuties.Find(context.Rules, a.Classification, a.Substances),
            Languages = languages,
            Warnings = [.. Warnings(languages.Whole)],
        };
    }

    private SheetSection Section(string number, IReadOnlyList<SheetSubsection> subsections) =>
        new(int.Parse(number, CultureInfo.InvariantCulture), Heading(number), subsections);

    // Other formats word some headings differently, in English.
    private string Heading(string number) =>
        context.Language.Code == "en" && context.Rules.Headings.TryGetValue(number, out string? own) ? own : words.Headings[number];

    private IEnumerable<string> Warnings(string? languageNote)
    {
        if (languageNote is not null)
        {
            yield return languageNote;
        }

        if (words.Checked != "verified")
        {
            yield return $"The headings in {context.Language.Name} were written {words.Checked}: compare them with the law's text.";
        }

        foreach (string open in context.Assessment.Unassessed)
        {
            yield return $"Not assessed: {open}";
        }
    }

    private List<SheetBlock> Blocks(string number)
    {
        context.Texts.Begin(number);
        var blocks = new List<SheetBlock>();
        var pairs = new List<IReadOnlyList<string>>();
        foreach (SheetRow row in rows.Where(r => r.Subsection == number))
        {
            if (row is SheetSentence { Label: not null } pair)
            {
                pairs.Add([context.Texts.Label(pair), SheetMarkValues.Fill(pair, context)]);
                continue;
            }

            Flush(pairs, blocks);
            blocks.AddRange(
                row switch
                {
                    SheetSentence sentence => [new SheetText(SheetMarkValues.Fill(sentence, context), sentence.IsStrong)],
                    SheetPartRow part => SheetParts.Find(part.Part).Make(context),
                    _ => throw new InvalidOperationException($"no blocks of {row.GetType().Name}"),
                }
            );
        }

        Flush(pairs, blocks);
        return blocks;
    }

    private static void Flush(List<IReadOnlyList<string>> pairs, List<SheetBlock> blocks)
    {
        if (pairs.Count > 0)
        {
            blocks.Add(new SheetTable(LabelWidths, [], [.. pairs]));
            pairs.Clear();
        }
    }
}
