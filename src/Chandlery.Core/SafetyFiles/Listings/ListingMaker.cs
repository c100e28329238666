using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Listings;

/// <summary>Writes what offers at a distance and advertisements must show of a candle.</summary>
public static class ListingMaker
{
    /// <summary>Places of an assessment for which no rule on listings is known.</summary>
    public static IEnumerable<Place> WithoutRules(Assessment a, ProductSafetyLaw law) =>
        a.Places.Where(p => law.For(law.Listings, p.Code) is null);

    /// <summary>The listing of a candle that may be sold, under the rules of its places on its day.</summary>
    /// <param name="a">The candle.</param>
    /// <param name="language">The buyer's language.</param>
    /// <param name="words">Our words in that language.</param>
    /// <param name="law">Law and advice.</param>
    /// <param name="use">Shop or advertisement.</param>
    public static ShopListing Make(Assessment a, Language language, SafetyWords words, Lawbook law, ListingUse use)
    {
        List<ListingRow> rows =
        [
            .. a
                .Places.Select(p => law.Safety.For(law.Safety.Listings, p.Code))
                .OfType<ListingRules>()
                .Distinct()
                .SelectMany(r => r.Rows)
                .Where(r => r.For.Contains(use) && r.InForce.On(a.AsOf)),
        ];
        rows = Spread(rows);
        List<ListingLine> lines =
        [
            .. rows.GroupBy(r => r.Part)
                .OrderBy(g => g.Key)
                .Select(g => Line(g.Key, Citation.Of(string.Join("; ", g.Select(r => r.Clause.Text).Distinct())), a, language, words, law))
                .Where(l => l.Texts.Count > 0),
        ];
        return new ShopListing(a, language.Code, use, lines, [.. Look(a, words, lines)]);
    }

    // The statements themselves say of which type the hazards are: they are not shown twice.
    private static List<ListingRow> Spread(List<ListingRow> rows) =>
        rows.Exists(r => r.Part == ListingPart.HazardStatements)
            ?
            [
                .. rows.SelectMany(r =>
                    r.Part == ListingPart.HazardTypes
                        ? [r with { Part = ListingPart.HazardStatements }, r with { Part = ListingPart.SupplementalStatements }]
                        : new[] { r }
                ),
            ]
            : rows;

    private static ListingLine Line(ListingPart part, Citation clause, Assessment a, Language language, SafetyWords words, Lawbook law) =>
        new(
            part,
            part == ListingPart.SafetyInformation && !a.Kind.Burns ? language.Words[a.Kind.Title] : words.Words[EnumName.Of(part)],
            [.. Texts(part, a, language, words, law).Distinct()],
            clause
        );

    private static IEnumerable<string> Texts(ListingPart part, Assessment a, Language language, SafetyWords words, Lawbook law) =>
        part switch
        {
            ListingPart.Product =>
            [
                a.Candle.Name,
                language.Words[a.Candle.Use == CandleUse.Outdoor ? a.Kind.Called.Outdoors : a.Kind.Called.Scented],
            ],
            ListingPart.Picture => [PictureOf(a)],
            ListingPart.Identifier => Identifiers(a, language, words),
            ListingPart.Quantity =>
            [
                a.Candle.NetVolume is { } volume
                    ? $"{language.Figures.Declared(volume.Value)} ml"
                    : $"{language.Figures.Declared(a.Candle.NetMass.Value)} g",
            ],
            ListingPart.Maker => Contact(a.Roles.Maker, a.Maker.Parties.ContactPoint),
            ListingPart.ResponsiblePerson => a.Roles.Others.Select(o => o.Party).Distinct().SelectMany(p => Contact(p, null)),
            ListingPart.Pictograms => a.Label.Pictograms.Select(p => words.Words[p.Code.Code]),
            ListingPart.SignalWord => a.Label.SignalWord is { } word ? [language.Words[word.Code.Key]] : [],
            ListingPart.HazardTypes => Statements(a.Label.Hazard.Concat(a.Label.Supplemental), a, language),
            ListingPart.HazardStatements => Statements(a.Label.Hazard, a, language),
            ListingPart.SupplementalStatements => Statements(a.Label.Supplemental, a, language),
            ListingPart.NamedSubstances => a.Label.Named.Select(n => n.Name),
            ListingPart.Precautions => Statements(a.Label.Precautionary, a, language),
            ListingPart.SafetyInformation => BurnMessages.All(a.Candle, a.Kind, a.Vessel, law.Burning, language),
            _ => HasHazards(a) ? [words.Words["labelSentence"]] : [],
        };

    // Without a picture the front of the label is what there is.
    private static string PictureOf(Assessment a) => a.Candle.Picture?.Name ?? $"{a.Id}-label.png";

    private static IEnumerable<string> Identifiers(Assessment a, Language language, SafetyWords words) =>
        [
            .. a.Candle.Gtin is { } gtin ? new[] { $"GTIN {gtin}" } : [],
            a.BatchCode is { } batch ? $"{language.Words["batch"]} {batch}" : words.Words["batchOnLabel"],
        ];

    private static IEnumerable<string> Contact(Party party, string? contactPoint) =>
        [
            party.Name,
            string.Join(", ", party.AddressLines),
            .. party.Electronic is { } electronic ? new[] { electronic } : [],
            .. contactPoint is null || contactPoint == party.Electronic ? [] : new[] { contactPoint },
        ];

    private static IEnumerable<string> Statements(IEnumerable<StatementChoice> choices, Assessment a, Language language) =>
        choices.Select(c => StatementText.Printed(language, c.Code, a.Label));

    private static bool HasHazards(Assessment a) => a.Label.Hazard.Count + a.Label.Supplemental.Count > 0;

    private static IEnumerable<string> Look(Assessment a, SafetyWords words, List<ListingLine> lines)
    {
        if (lines.Exists(l => l.Part == ListingPart.Picture))
        {
            yield return a.Candle.Picture is null
                ? a.Kind.Say("No picture of the candle is declared")
                    + $" ('picture' in its file): the listing names its label, {PictureOf(a)}, which 'chandlery label --format png' draws. A photograph shows more."
                : a.Kind.Say("Show the picture of the candle") + $" beside the text: {PictureOf(a)}.";
        }

        if (a.BatchCode is null && lines.Exists(l => l.Part == ListingPart.Identifier))
        {
            yield return "No batch code is declared: the listing sends the buyer to the label for it.";
        }

        yield return $"The headings and the names of pictograms in '{words.Code}' were {words.Checked}.";
    }
}
