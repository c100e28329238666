using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Core.Hazards;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Tables;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>Reads a supplier's PDF: safety data sheet, IFRA certificate or allergen statement.</summary>
internal sealed partial class SheetReader(SheetWording wording, HazardVocabulary vocabulary)
{
    private const int FewestSections = 3;
    private const int LinesOfHead = 60;
    private const int LongestIfraLine = 400;
    private readonly HazardText hazards = new(vocabulary, wording);
    private readonly LabelFinder labels = new(wording);

    /// <summary>What the PDF says, or null when it is none of the three kinds.</summary>
    /// <param name="pages">Its pages.</param>
    /// <param name="document">Its number among the PDFs of the draft.</param>
    /// <param name="kind">What it is.</param>
    public OilDraft? Read(IReadOnlyList<SheetPage> pages, int document, out SheetKind kind)
    {
        IReadOnlyList<TextLine> lines = TextLine.WithoutFrames(pages, l => ColumnKind.IsTableHeading(l, wording));
        var sections = Sections.Of(lines, wording);
        List<TextLine> all = [.. pages.SelectMany(TextLine.Of)];
        string first = string.Join(' ', all.Take(LinesOfHead).Select(l => l.Text));
        if (sections.Count >= FewestSections && sections[3].Count > 0)
        {
            kind = SheetKind.SafetyDataSheet;
            return ReadSafetySheet(sections, all, pages, document);
        }

        if (Phrase.AnyIn(wording.Lists["allergenStatement"], first) && !Phrase.AnyIn(wording.Lists["ifraCertificate"], first))
        {
            kind = SheetKind.AllergenStatement;
            return ReadAllergens(lines, all, pages, document);
        }

        kind = SheetKind.IfraCertificate;
        return Phrase.AnyIn(wording.Lists["ifraCertificate"], first) ? ReadIfra(all, document) : null;
    }

    private OilDraft ReadSafetySheet(Sections sections, IReadOnlyList<TextLine> all, IReadOnlyList<SheetPage> pages, int document)
    {
        var doubts = new List<string>();
        var rows = new IngredientRows(wording, hazards, document);
        IReadOnlyList<TextLine> composition = sections[3];
        Table? table = new TableFinder(wording).Find(composition, pages);
        List<DraftIngredient> ingredients = table is null ? [.. LabelledIngredients.Of(composition, wording, rows)] : [.. rows.Of(table)];
        if (ingredients.Count == 0)
        {
            doubts.Add("section 3 has no table or list of ingredients that could be read; type it in");
        }

        AddMissing(ingredients, composition, doubts);
        ingredients = [.. ingredients.Select(i => WithLaterSections(i, sections))];
        Head head = ReadHead(sections[1], all, document);
        return new OilDraft(
            [],
            head.Name,
            head.Supplier,
            head.Document,
            head.Version,
            head.Revised,
            ReadOwnClasses(sections.Sub(2, 1), document),
            ingredients,
            ReadFlashPoint(sections[9], document),
            ReadDensity(sections[9], document),
            null,
            doubts
        );
    }

    // A CAS number that stands in section 3 and in no row means that a row was lost.
    private static void AddMissing(IReadOnlyList<DraftIngredient> ingredients, IReadOnlyList<TextLine> composition, List<string> doubts)
    {
        HashSet<string> printed = [.. composition.SelectMany(l => ColumnKind.CasPattern().Matches(l.Text).Select(m => m.Value))];
        printed.ExceptWith(ingredients.Select(i => i.Cas?.Value ?? ""));
        foreach (string cas in printed)
        {
            doubts.Add($"section 3 prints the CAS number {cas}, which no drafted row has: is a row missing?");
        }

        foreach (
            IGrouping<string, DraftIngredient> twice in ingredients
                .Where(i => i.Cas is not null)
                .GroupBy(i => i.Cas!.Value)
                .Where(g => g.Count() > 1)
        )
        {
            doubts.Add($"the CAS number {twice.Key} is drafted {twice.Count()} times");
        }
    }

    /// <summary>What the head of any sheet says.</summary>
    private sealed record Head(
        Found<string>? Name,
        Found<string>? Supplier,
        Found<string>? Document,
        Found<string>? Version,
        Found<DateOnly>? Revised
    );

    private Head ReadHead(IReadOnlyList<TextLine> identification, IReadOnlyList<TextLine> all, int document)
    {
        Found<string>? Text(IReadOnlyList<TextLine> lines, string kind) =>
            labels.Find(lines, kind) is { } l
                ? new Found<string>(l.Text, document, l.Page, l.Box, l.IsUnder ? ["it stands under its label, not beside it"] : [])
                : null;
        Found<DateOnly>? revised = null;
        foreach (Labelled value in labels.All(all, "revised"))
        {
            if (DateText.Find(value.Text, wording) is { } printed)
            {
                revised = new Found<DateOnly>(printed.Day, document, value.Page, value.Box, printed.Doubt is { } doubt ? [doubt] : []);
                break;
            }
        }

        return new Head(
            Text(identification, "name"),
            Text(identification, "supplier"),
            Text(all, "document"),
            Text(all, "version"),
            revised
        );
    }

    private Found<IReadOnlyList<string>>? ReadOwnClasses(IReadOnlyList<TextLine> lines, int document)
    {
        List<TextLine> useful = [.. lines.TakeWhile(l => !Label22().IsMatch(l.Text))];
        List<TextLine> withClasses = [.. useful.Where(l => hazards.Read(l.Text).Classes is not null)];
        if (withClasses.Count == 0)
        {
            return null;
        }

        HazardReading read = hazards.Read(string.Join(" ; ", useful.Select(l => l.Text)));
        return new Found<IReadOnlyList<string>>(
            read.Classes ?? [],
            document,
            withClasses[0].Page,
            Box.Around(withClasses.Where(l => l.Page == withClasses[0].Page).Select(l => l.Box)),
            [.. read.Doubts.Where(d => !d.StartsWith("not understood", StringComparison.Ordinal))]
        );
    }

    private Found<DraftFlashPoint>? ReadFlashPoint(IReadOnlyList<TextLine> lines, int document)
    {
        foreach (Labelled value in labels.All(lines, "flashPoint"))
        {
            Match match = Temperature().Match(value.Text);
            if (!match.Success)
            {
                continue;
            }

            var doubts = new List<string>();
            double figure = Number(match.Groups["t"].Value);
            string sign = match.Groups["sign"].Value;
            if (match.Groups["unit"].Value.Equals("F", StringComparison.OrdinalIgnoreCase))
            {
                doubts.Add($"converted from {match.Groups["t"].Value} °F");
                figure = Math.Floor((figure - 32) * 50 / 9) / 10;
            }

            if (sign.StartsWith('<') || sign == "≤")
            {
                doubts.Add("the sheet gives only an upper bound; it is drafted as the flash point, the true one may be lower");
            }

            if (match.Groups["to"].Success)
            {
                doubts.Add("the sheet gives a range; its low end is drafted");
            }

            string? method =
                Phrase.AnyIn(wording.Lists["closedCup"], value.Text) ? "closed cup"
                : Phrase.AnyIn(wording.Lists["openCup"], value.Text) ? "open cup"
                : null;
            return new Found<DraftFlashPoint>(
                new DraftFlashPoint(figure, sign.StartsWith('>') || sign == "≥", method),
                document,
                value.Page,
                value.Box,
                value.IsUnder ? [.. doubts, "it stands under its label, not beside it"] : doubts
            );
        }

        return null;
    }

    private Found<double>? ReadDensity(IReadOnlyList<TextLine> lines, int document)
    {
        foreach (Labelled value in labels.All(lines, "density"))
        {
            Match match = Density().Match(value.Text);
            if (!match.Success)
            {
                continue;
            }

            var doubts = new List<string>();
            double figure = Number(match.Groups["d"].Value);
            if (match.Groups["to"].Success)
            {
                doubts.Add($"the sheet gives a range; its high end is drafted");
                figure = Math.Max(figure, Number(match.Groups["to"].Value));
            }

            if (match.Groups["perCubicMetre"].Success)
            {
                figure /= 1000;
            }
            else if (!match.Groups["unit"].Success)
            {
                doubts.Add("the sheet gives no unit; grams per millilitre were assumed");
            }

            if (figure is < 0.6 or > 1.6)
            {
                doubts.Add("an oil of this density would be unusual");
            }

            return new Found<double>(figure, document, value.Page, value.Box, doubts);
        }

        return null;
    }

    // Sections 11 and 12 give estimates and M-factors in lines that name the substance, or under its name.
    private DraftIngredient WithLaterSections(DraftIngredient ingredient, Sections sections)
    {
        var toxicity = new List<ToxicityEstimate>();
        Found<IReadOnlyList<ToxicityEstimate>>? at = null;
        foreach (TextLine line in LinesAbout(ingredient, sections[11]))
        {
            IReadOnlyList<ToxicityEstimate> read = hazards.ReadToxicity(line.Text);
            toxicity.AddRange(read.Where(r => toxicity.All(t => t.Route != r.Route)));
            at ??=
                read.Count > 0 ? new Found<IReadOnlyList<ToxicityEstimate>>([], ingredient.Name.Document, line.Page, line.Box, []) : null;
        }

        Found<MFactors>? m = null;
        foreach (TextLine line in LinesAbout(ingredient, sections[12]))
        {
            m ??= hazards.ReadM(line.Text) is { } found
                ? new Found<MFactors>(found, ingredient.Name.Document, line.Page, line.Box, [])
                : null;
        }

        List<string> doubts = [.. ingredient.Doubts];
        if (m is not null && ingredient.M is not null && m.Value != ingredient.M.Value)
        {
            doubts.Add("sections 3 and 12 give different M-factors; section 3's is drafted");
        }

        foreach (ToxicityEstimate one in toxicity)
        {
            if (ingredient.Toxicity?.Value.FirstOrDefault(t => t.Route == one.Route) is { } own && Math.Abs(own.Value - one.Value) > 1e-9)
            {
                doubts.Add($"sections 3 and 11 give different estimates for {one.Route}; section 3's is drafted");
            }
        }

        return ingredient with
        {
            Toxicity = ingredient.Toxicity ?? (at is null ? null : at.As<IReadOnlyList<ToxicityEstimate>>(toxicity)),
            M = ingredient.M ?? m,
            Doubts = doubts,
        };
    }

    private static IEnumerable<TextLine> LinesAbout(DraftIngredient ingredient, IReadOnlyList<TextLine> lines)
    {
        string name = Phrase.Plain(ingredient.Name.Value);
        bool about = false;
        foreach (TextLine line in lines)
        {
            string plain = Phrase.Plain(line.Text);
            bool named =
                (ingredient.Cas is { } cas && line.Text.Contains(cas.Value, StringComparison.Ordinal))
                || (
                    name.Length > 3
                    && plain.StartsWith(name, StringComparison.Ordinal)
                    && (plain.Length == name.Length || !char.IsLetter(plain[name.Length]))
                );
            bool another = !named && (ColumnKind.HasCas(line.Text) || SubHeading().IsMatch(line.Text));
            about = named || (about && !another);
            if (about)
            {
                yield return line;
            }
        }
    }

    private OilDraft ReadAllergens(IReadOnlyList<TextLine> lines, IReadOnlyList<TextLine> all, IReadOnlyList<SheetPage> pages, int document)
    {
        var rows = new IngredientRows(wording, hazards, document);
        Table? table = new TableFinder(wording).Find(lines, pages);
        List<DraftIngredient> ingredients = table is null ? [] : [.. rows.Of(table).Where(i => i.Share is not null)];
        Head head = ReadHead(all, all, document);
        return Empty(head) with
        {
            Ingredients = ingredients,
            Doubts = ingredients.Count == 0 ? ["the allergen statement has no table that could be read"] : [],
        };
    }

    private OilDraft ReadIfra(IReadOnlyList<TextLine> lines, int document)
    {
        Head head = ReadHead(lines, lines, document);
        Found<int>? amendment = null;
        foreach (TextLine line in lines)
        {
            Match match = Amendment().Match(line.Text);
            if (amendment is null && match.Success)
            {
                amendment = new Found<int>(
                    int.Parse(match.Groups["n"].Value, CultureInfo.InvariantCulture),
                    document,
                    line.Page,
                    line.Box,
                    []
                );
            }
        }

        var limits = new List<(string Category, Found<string> Limit)>();
        string words = string.Join('|', wording.Lists["category"].Select(Regex.Escape));
        string special = string.Join(
            '|',
            wording.Lists["notRestricted"].Concat(wording.Lists["notPermitted"]).OrderByDescending(p => p.Length).Select(Regex.Escape)
        );
        var pattern = new Regex(
            $@"(?:^|\b(?:{words})\.?\s*)\s*(?<c>1[0-2][AB]?|[1-9][A-F]?)\b(?!\s*[.,][0-9])(?:(?!\b(?:{words})\b).)*?(?<v>[0-9]+(?:[.,][0-9]+)?\s*%|{special})",
            RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
        );
        foreach (TextLine line in lines.Where(l => l.Text.Length < LongestIfraLine))
        {
            foreach (Match match in pattern.Matches(line.Text))
            {
                string category = match.Groups["c"].Value.ToUpperInvariant();
                if (limits.Any(l => l.Category == category))
                {
                    continue;
                }

                limits.Add((category, new Found<string>(LimitText(match.Groups["v"].Value), document, line.Page, line.Box, [])));
            }
        }

        List<string> doubts =
        [
            .. lines
                .Select(l => BareCategory().Match(l.Phrases()[0].Text))
                .Where(m => m.Success && limits.All(l => l.Category != m.Groups["c"].Value))
                .Select(m => $"the certificate names category {m.Groups["c"].Value}, for which no limit could be read"),
        ];
        if (limits.All(l => l.Category != "12"))
        {
            doubts.Add("the certificate gives no limit for category 12, the candle's");
        }

        return Empty(head) with
        {
            Ifra = new DraftIfra(amendment, head.Revised, limits),
            Doubts = doubts,
        };
    }

    private string LimitText(string printed)
    {
        string plain = Phrase.Plain(printed);
        return wording.Lists["notRestricted"].Contains(plain) ? "not restricted"
            : wording.Lists["notPermitted"].Contains(plain) ? "not permitted"
            : Number(printed.Replace("%", "", StringComparison.Ordinal).Trim()).ToString(CultureInfo.InvariantCulture);
    }

    private static OilDraft Empty(Head head) =>
        new([], head.Name, head.Supplier, head.Document, head.Version, head.Revised, null, [], null, null, null, []);

    private static double Number(string text) => double.Parse(text.Replace(',', '.').Replace('\u2212', '-'), CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"(?<sign>[<>≤≥]=?)?\s*(?<t>-?[0-9]{1,3}(?:[.,][0-9]+)?)(?:\s*[-\u2013]\s*(?<to>[0-9]{1,3}(?:[.,][0-9]+)?))?\s*(?:°|º|deg\.?|degrees)?\s*(?<unit>[CF])\b",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Temperature();

    [GeneratedRegex(
        @"(?<d>[0-9]+[.,][0-9]+|[0-9]{3,4}(?=\s*kg))(?:\s*(?:[-\u2013]|to|bis|à)\s*(?<to>[0-9]+[.,][0-9]+|[0-9]{3,4}))?\s*(?<unit>g\s*/\s*(?:cm|ml|cc)|kg\s*/\s*(?:l|dm)|(?<perCubicMetre>kg\s*/\s*m))?",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Density();

    [GeneratedRegex(
        @"\b(?:(?<n>[0-9]{2})(?:st|nd|rd|th|\.|e|er|ème)?\s+(?:ifra\s+)?amende?ment|amende?ment\s*(?:no|nr|n°|number)?\.?\s*(?<n>[0-9]{2}))\b",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Amendment();

    [GeneratedRegex(@"^(?:\p{L}+\.?\s)?(?<c>1[0-2][AB]?|[1-9][A-F]?)$")]
    private static partial Regex BareCategory();

    [GeneratedRegex(@"^[0-9]{1,2}\.[0-9]")]
    private static partial Regex SubHeading();

    [GeneratedRegex(@"^2\.2\b")]
    private static partial Regex Label22();
}
