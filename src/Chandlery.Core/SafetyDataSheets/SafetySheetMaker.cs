using Chandlery.Core.Assessed;
using Chandlery.Core.Classified;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>Writes the 16 sections of a candle's safety data sheet.</summary>
public sealed class SafetySheetMaker
{
    private const string NoData = "No data available: no test or supplier's figure is declared for the finished candle.";
    private readonly Assessment a;
    private readonly Language language;
    private readonly SheetWords words;
    private readonly Lawbook lawbook;
    private readonly SafetySheetRules rules;
    private readonly HashSet<string> conditions;

    private SafetySheetMaker(Assessment assessment, Language language, SheetWords words, Lawbook lawbook)
    {
        a = assessment;
        this.language = language;
        this.words = words;
        this.lawbook = lawbook;
        rules = assessment.Edition.SafetySheet;
        conditions = Conditions(assessment);
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
        var sections = new List<SheetSection>();
        foreach (
            IGrouping<string, string> section in words
                .Headings.Keys.Where(k => k.Contains('.', StringComparison.Ordinal))
                .Where(k => !rules.Without.Contains(k))
                .GroupBy(k => k.Split('.')[0])
        )
        {
            sections.Add(Section(section.Key, [.. section.Select(n => new SheetSubsection(n, Heading(n), [.. Blocks(n)]))]));
        }

        sections.Add(Section("16", [new SheetSubsection("16", "", [.. OtherInformation()])]));
        return new SafetySheet(
            language,
            words,
            a.Candle.Name,
            rules.Format,
            revision,
            a.AsOf,
            sections,
            SheetDuties.Find(rules, a.Classification, a.Substances),
            [.. Warnings()]
        );
    }

    private SheetSection Section(string number, IReadOnlyList<SheetSubsection> subsections) =>
        new(int.Parse(number, System.Globalization.CultureInfo.InvariantCulture), Heading(number), subsections);

    // Other formats word some headings differently, in English.
    private string Heading(string number) =>
        language.Code == "en" && rules.Headings.TryGetValue(number, out string? own) ? own : words.Headings[number];

    private IEnumerable<string> Warnings()
    {
        if (language.Code != "en")
        {
            yield return $"Only headings and statements are in {language.Name}; the free text is English. Where the law asks for another language (REACH Art. 31(5)), it must be translated by a competent person before the sheet is handed out.";
        }

        if (words.Checked != "verified")
        {
            yield return $"The headings in {language.Name} were written {words.Checked}: compare them with the law's text.";
        }

        foreach (string open in a.Unassessed)
        {
            yield return $"Not assessed: {open}";
        }
    }

    private static HashSet<string> Conditions(Assessment a)
    {
        HashSet<string> holds = [.. a.Classification.Classes.Select(c => c.Category.ClassCode)];
        holds.Add(a.Candle.Use == CandleUse.Outdoor ? "outdoor" : "indoor");
        if (a.Classification.Classes.Count == 0)
        {
            holds.Add("not classified");
        }

        if (a.Classification.Sensitisers.Count > 0)
        {
            holds.Add("names sensitisers");
        }

        if (!Concerning(a).Any())
        {
            holds.Add("no PBT or ED");
        }

        return holds;
    }

    private static IEnumerable<Substance> Concerning(Assessment a) =>
        a.Substances.Where(s =>
            s.Hazards.Any(h => h.Category.ClassCode is "PBT" or "vPvB" or "ED HH" or "ED ENV")
            && s.Ingredient.WholeHigh.Reaches(new MassPercent(0.1))
        );

    private IEnumerable<SheetBlock> Advice(string number) =>
        lawbook
            .SheetAdvice.Where(t => t.Subsection == number)
            .Where(t => (t.When.Count == 0 || t.When.Any(conditions.Contains)) && !t.Unless.Any(conditions.Contains))
            .Select(t => new SheetText(t.Text));

    private IEnumerable<SheetBlock> Blocks(string number) =>
        number switch
        {
            "1.1" => Identifier(),
            "1.3" => Supplier(),
            "1.4" => Emergency(),
            "2.1" => OwnClasses(),
            "2.2" => LabelBlocks(),
            "2.3" => Advice(number).Concat(ConcerningText()),
            "3.2" => Composition(),
            "9.1" => [PhysicalProperties.Table(a)],
            "9.2" =>
            [
                new SheetText(
                    "Physical hazard classes: not computed; they need tests on the finished candle. Burning behaviour is the subject of the candle standards (EN 15493, EN 17616), whose tests are not part of this sheet."
                ),
            ],
            "11.1" => Toxicology(),
            "11.2" => Endocrine("ED HH", "health"),
            "12.1" => Aquatic(),
            "12.2" or "12.3" or "12.4" => [new SheetText(NoData)],
            "12.5" => Persistent(),
            "12.6" => Endocrine("ED ENV", "the environment"),
            "12.7" => [new SheetText("None known from the declared data.")],
            "14.1" or "14.2" or "14.3" or "14.4" or "14.5" or "14.6" or "14.7" => Transport(number),
            "15.1" => Regulations(),
            "15.2" =>
            [
                new SheetText(
                    "No chemical safety assessment was made for this mixture; none is asked for (REACH Art. 14 concerns registered substances)."
                ),
            ],
            _ => Advice(number),
        };

    private IEnumerable<SheetBlock> Identifier()
    {
        var rows = new List<string[]> { new[] { words.Words["product"], a.Candle.Name } };
        rows.Add(["Code", a.Id]);
        if (a.Edition.Ufi.Needed && a.Ufi is not null)
        {
            rows.Add(["UFI", a.Ufi]);
        }

        return [new SheetTable([28, 72], [], rows)];
    }

    private IEnumerable<SheetBlock> Supplier() =>
        [
            new SheetTable(
                [28, 72],
                [],
                [
                    [words.Words["supplier"], a.Maker.Name],
                    ["Address", string.Join(", ", a.Maker.AddressLines)],
                    ["Telephone", a.Maker.Telephone],
                    .. a.Maker.Email is { } email
                        ?
                        [
                            ["E-mail (competent person for the sheet)", email],
                        ]
                        : Array.Empty<string[]>(),
                    .. a.Maker.Web is { } web
                        ?
                        [
                            ["Web", web],
                        ]
                        : Array.Empty<string[]>(),
                ]
            ),
        ];

    private IEnumerable<SheetBlock> Emergency() =>
        [new SheetText(a.Maker.EmergencyTelephone ?? $"No emergency number is declared; the supplier's telephone is {a.Maker.Telephone}.")];

    private IEnumerable<SheetBlock> OwnClasses()
    {
        if (a.Classification.Classes.Count == 0)
        {
            yield return new SheetText(
                $"Not classified as hazardous from the declared data ({a.Edition.Name}; computed for {a.AsOf:yyyy-MM-dd})."
            );
            if (a.Composition.UnknownHigh.Value > 0.005)
            {
                yield return new SheetText(
                    $"Up to {a.Composition.UnknownHigh} of the candle is not declared by its suppliers and was not assessed."
                );
            }

            yield break;
        }

        yield return new SheetText($"{a.Edition.Name}:");
        yield return new SheetTable(
            [30, 70],
            [],
            [.. a.Classification.Classes.Select(c => new[] { $"{Short(c.Category)}, {c.Statement}", Statement(c.Statement) })]
        );
    }

    private IEnumerable<SheetBlock> LabelBlocks()
    {
        LabelElements label = a.Label;
        if (label.Pictograms.Count > 0)
        {
            yield return new SheetPictograms([.. label.Pictograms.Select(p => p.Code)]);
        }

        if (label.SignalWord is { } word)
        {
            yield return new SheetText(language.Words[word.Code.Key], Strong: true);
        }

        List<string[]> rows =
        [
            .. label
                .Hazard.Concat(label.Supplemental)
                .Concat(label.Precautionary)
                .Select(s => new[] { CodeOf(s.Code), StatementText.Printed(language, s.Code, label) }),
        ];
        if (rows.Count > 0)
        {
            yield return new SheetTable([14, 86], [], rows);
        }

        if (label.Hazard.Count > 0 && label.Named.Count > 0)
        {
            yield return new SheetText($"{language.Words["contains"]}: {string.Join(", ", label.Named.Select(n => n.Name))}.");
        }

        if (rows.Count == 0)
        {
            yield return new SheetText(
                !a.Edition.Label.ShowsHazards
                    ? "No hazard label of the workplace rules stands on this consumer product; see section 15."
                    : "No label elements are called for by the declared data."
            );
        }
    }

    private static string CodeOf(string code) => code.StartsWith("GHS-", StringComparison.Ordinal) ? "-" : code;

    private IEnumerable<SheetBlock> ConcerningText()
    {
        foreach (Substance s in Concerning(a))
        {
            yield return new SheetText(
                $"{s.Name} (up to {s.Ingredient.WholeHigh}) is {string.Join(", ", s.Hazards.Where(h => h.Category.ClassCode is "PBT" or "vPvB" or "ED HH" or "ED ENV").Select(h => h.Category.Code))}."
            );
        }
    }

    private IEnumerable<SheetBlock> Composition()
    {
        IReadOnlyList<Substance> named = SheetDuties.Named(rules, a.Substances);
        yield return new SheetText(
            "A candle of wax and fragrance; shares of the finished candle, the range as the suppliers' sheets give it."
        );
        if (named.Count == 0)
        {
            yield return new SheetText($"No declared substance reaches a share from which it must be named ({rules.NamedFrom[0].Clause}).");
        }
        else
        {
            yield return new SheetTable(
                [27, 12, 12, 14, 21, 14],
                [
                    words.Words["name"],
                    words.Words["cas"],
                    words.Words["ec"],
                    words.Words["share"],
                    words.Words["classes"],
                    words.Words["special"],
                ],
                [.. named.Select(SubstanceRow.Cells)]
            );
        }

        if (a.Composition.UnknownHigh.Value > 0.005)
        {
            yield return new SheetText($"Not declared by the suppliers, and not assessed: up to {a.Composition.UnknownHigh}.");
        }
    }

    private IEnumerable<SheetBlock> Toxicology()
    {
        yield return new SheetText("Computed from the ingredients; no test was made on the candle.");
        yield return new SheetTable(
            [30, 22, 48],
            [],
            [.. a.Verdict.Law.Rules.Where(r => r.Results.First().Area == HazardArea.Health).Select(ResultRow), .. NotComputed()]
        );
        List<string[]> estimates =
        [
            .. a
                .Substances.Where(s => s.Toxicity.Count > 0)
                .Select(s => new[] { s.Name, string.Join("; ", s.Toxicity.Select(t => SubstanceRow.Estimate(t))) }),
        ];
        if (estimates.Count > 0)
        {
            yield return new SheetText("Acute toxicity estimates of ingredients:");
            yield return new SheetTable([40, 60], [], estimates);
        }

        yield return new SheetText(
            "Likely ways of contact: skin (handling, hot wax), inhalation (burning). Symptoms: see 4.2. Delayed and long-term effects: see the classes above."
        );
    }

    private string[] ResultRow(ClassRule rule)
    {
        ClassResult? result = a.Verdict.ResultOf(rule);
        string unknown =
            a.Composition.UnknownHigh.Value > 0.005
                ? $" Up to {a.Composition.UnknownHigh} of the candle is unknown and may change this."
                : "";
        return
        [
            rule.Group,
            result is null ? "not classified" : $"{Short(result.Category)}, {result.Statement}",
            result is null
                ? $"On the declared data the criteria are not met ({rule.Clause}).{unknown}"
                : $"{result.Working.Sentence} ({result.Working.Clause})",
        ];
    }

    private IEnumerable<string[]> NotComputed() =>
        a
            .Edition.NotComputed.Where(n => n.Hazards[0].Area == HazardArea.Health)
            .Select(n => new[] { n.Hazards[0].ClassCode, "not computed", $"{n.Why} ({n.Clause})" });

    private IEnumerable<SheetBlock> Endocrine(string classCode, string of)
    {
        List<string> who =
        [
            .. a
                .Substances.Where(s =>
                    s.Hazards.Any(h => h.Category.ClassCode == classCode) && s.Ingredient.WholeHigh.Reaches(new MassPercent(0.1))
                )
                .Select(s => $"{s.Name} (up to {s.Ingredient.WholeHigh})"),
        ];
        string undeclared =
            a.Composition.UnknownHigh.Value > 0.005 ? $" Up to {a.Composition.UnknownHigh} of the candle was not assessed." : "";
        yield return new SheetText(
            who.Count > 0
                ? $"Endocrine disrupting for {of}: {string.Join(", ", who)}."
                : $"No declared substance from 0.1 % on is classified as endocrine disrupting for {of}.{undeclared}"
        );
    }

    private IEnumerable<SheetBlock> Aquatic()
    {
        List<ClassRule> aquatic = [.. a.Verdict.Law.Rules.Where(r => r.Results.First().Area == HazardArea.Environment)];
        if (aquatic.Count == 0)
        {
            yield return new SheetText($"Hazards to the environment are not part of {a.Edition.Name}; see section 14 for transport.");
            yield break;
        }

        yield return new SheetText("Computed from the ingredients by the summation method; no test was made on the candle.");
        yield return new SheetTable([30, 22, 48], [], [.. aquatic.Select(ResultRow)]);
    }

    private IEnumerable<SheetBlock> Persistent()
    {
        List<string> who =
        [
            .. a
                .Substances.Where(s => s.Hazards.Any(h => h.Category.ClassCode is "PBT" or "vPvB"))
                .Select(s => $"{s.Name} (up to {s.Ingredient.WholeHigh})"),
        ];
        yield return new SheetText(
            who.Count > 0
                ? $"PBT or vPvB: {string.Join(", ", who)}."
                : "No declared substance is given as PBT or vPvB by its supplier. No assessment of its own was made for this mixture."
        );
    }

    private IEnumerable<SheetBlock> Transport(string number)
    {
        // The UN Model Regulations hold everywhere, also where an edition leaves the environment out.
        Classification forTransport = lawbook.Edition(rules.Transport.ClassifiedBy).On(a.AsOf).Judge(a.Composition).Classification;
        SheetTransport t = SheetTransport.Of(rules.Transport, forTransport, a.Candle.NetMass);
        string text = number switch
        {
            "14.1" => t.UnNumber,
            "14.2" => t.Name,
            "14.3" => t.Class,
            "14.4" => t.PackingGroup,
            "14.5" => t.Environment,
            "14.6" => t.Precautions,
            _ => "Not applicable: the candle is not carried in bulk.",
        };
        return [new SheetText(text)];
    }

    private IEnumerable<SheetBlock> Regulations()
    {
        foreach (string source in a.Edition.Sources)
        {
            yield return new SheetText(source + ".");
        }

        if (a.Edition.Ufi.Needed && a.Ufi is not null)
        {
            yield return new SheetText($"Notification to the poison centres with UFI {a.Ufi} ({a.Edition.Ufi.Clause}).");
        }

        foreach (string left in a.Edition.DoesNotCover)
        {
            yield return new SheetText($"Not assessed here: {left}.");
        }

        yield return new SheetText(
            "Not looked up here: candidate list (REACH Art. 59), authorisation and restriction lists, national lists; a competent person checks them."
        );
    }

    private IEnumerable<SheetBlock> OtherInformation()
    {
        SheetDutyFinding duty = SheetDuties.Find(rules, a.Classification, a.Substances);
        yield return new SheetText("Is this sheet due?", Strong: true);
        foreach (DutyClause reason in duty.Reasons)
        {
            yield return new SheetText(reason.Clause.IsNone ? reason.Says : $"{reason.Says} ({reason.Clause})");
        }

        List<StatementCode> codes =
        [
            .. a
                .Classification.Classes.Select(c => c.Statement)
                .Concat(SheetDuties.Named(rules, a.Substances).SelectMany(s => s.Hazards).Select(h => h.Statement))
                .Distinct()
                .OrderBy(c => c.Text, StringComparer.Ordinal),
        ];
        if (codes.Count > 0)
        {
            yield return new SheetText("Full text of the hazard statements in sections 2 and 3", Strong: true);
            yield return new SheetTable([14, 86], [], [.. codes.Select(c => new[] { c.Text, Statement(c) })]);
        }

        if (a.Classification.Classes.Count > 0)
        {
            yield return new SheetText("Method of classification", Strong: true);
            yield return new SheetTable(
                [30, 70],
                [words.Words["classes"], words.Words["method"]],
                [
                    .. a.Classification.Classes.Select(c =>
                        new[] { $"{Short(c.Category)}, {c.Statement}", $"Calculation method: {c.Working.Formula} ({c.Working.Clause})" }
                    ),
                ]
            );
        }

        yield return new SheetText("Sources", Strong: true);
        foreach (Oil oil in a.Composition.Recipe.Oils.Select(o => o.Oil))
        {
            yield return new SheetText($"{oil.Name}, {oil.Supplier}: {oil.Document}, revised {oil.Revised:yyyy-MM-dd}.");
        }

        yield return new SheetText(
            $"Law: {a.Edition.Name}, looked up {a.Edition.LookedUp:yyyy-MM-dd}. Format: {rules.Format} ({rules.FormatClause})."
        );
        if (a.Unassessed.Count > 0)
        {
            yield return new SheetText("What could not be assessed", Strong: true);
            foreach (string open in a.Unassessed)
            {
                yield return new SheetText(open);
            }
        }

        yield return new SheetText("Abbreviations", Strong: true);
        yield return new SheetText(
            "ATE: acute toxicity estimate. CAS: Chemical Abstracts Service. CLP: Regulation (EC) No 1272/2008. EC: number in the European inventories. ED: endocrine disruptor. M: multiplying factor for toxicity to water life. PBT, vPvB: (very) persistent, (very) bioaccumulative and toxic. UFI: unique formula identifier."
        );
        yield return new SheetText("Advice on training: whoever packs or sells the candle should know sections 2, 5 and 7.");
        yield return new SheetText(
            "Computed from the suppliers' declarations; it helps and does not replace local law or a competent person, who must check it before it is handed out."
        );
    }

    // Letters that say more (H361d) may lack a text of their own; then the statement without them stands for it.
    private string Statement(StatementCode code) =>
        language.Statement(code)
        ?? (code.Text.Length > 4 && StatementCode.TryParse(code.Text[..4]) is { } plain ? language.Statement(plain) : null)
        ?? $"({code}: no text in {language.Name}; look it up before the sheet is handed out)";

    private static string Short(HazardCategory category) => $"{category.ClassCode} {category.Category}".Trim();
}
