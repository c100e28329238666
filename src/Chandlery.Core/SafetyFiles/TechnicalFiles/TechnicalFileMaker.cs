using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Core.SafetyFiles.Duties;
using Chandlery.Core.SafetyFiles.Incidents;
using Chandlery.Core.SafetyFiles.Records;
using Chandlery.Core.SafetyFiles.Tests;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.TechnicalFiles;

/// <summary>Writes the technical file of a candle: what it is, what may happen, how that is met, and where the proof stands.</summary>
/// <param name="a">The candle.</param>
/// <param name="catalogue">The maker's declarations.</param>
/// <param name="lawbook">The law.</param>
/// <param name="version">Number of the file's version.</param>
public sealed class TechnicalFileMaker(Assessment a, Catalogue catalogue, Lawbook lawbook, int version)
{
    private readonly CandleTests tests = CandleTests.Of(a.Candle, catalogue, lawbook.Safety.File.Value);
    private readonly List<Batch> batches = [.. catalogue.BatchesOf(a.Candle).OrderBy(b => b.Poured)];

    private readonly List<Incident> incidents =
    [
        .. catalogue.OfKind<Incident>().Where(i => i.Candle.Id == a.Candle.Id).OrderBy(i => i.Known),
    ];

    /// <summary>What it is compared with; null when nothing was looked for.</summary>
    public EarlierVersion? Earlier { get; init; }

    /// <summary>The line that names the register's last entry; empty for none.</summary>
    public string RegisterHead { get; init; } = "";

    /// <summary>The drawing of the product that its paper has; null for none.</summary>
    public SheetDrawing? Picture { get; init; }

    /// <summary>The drawings of its label; empty where there is none.</summary>
    public IReadOnlyList<SheetDrawing> Labels { get; init; } = [];

    /// <summary>Why there is no label; empty where there is one.</summary>
    public string NoLabel { get; init; } = "";

    private IReadOnlyList<RiskLine> RiskLines => RiskFinder.Of(a, tests, lawbook.Safety.File.Value, incidents);

    /// <summary>What is missing, a sentence each.</summary>
    public IReadOnlyList<string> Missing =>
        [
            .. a.Findings.Where(f => f.Gravity == Gravity.Stop).Select(f => $"Stops the sale: {f.What}"),
            .. a.Kind.Burns ? tests.Missing : [],
            .. RiskLines
                .Where(r => r.IsInQuestion)
                .Select(r => $"An open incident touches the risk {r.Row.Id}: review its measures and its proof, then close the incident."),
            .. incidents
                .Where(i => i is { Kind: IncidentKind.Accident, Risks.Count: 0 })
                .Select(i => $"{i.Id} does not say which risks it touches: name them under 'risks'; until then any may be in question."),
            .. batches.Count == 0 ? ["No batch is declared."] : Array.Empty<string>(),
            .. batches
                .Select(b => (b, Lacking: LotCoverage.Lacking(b, a.Candle, catalogue)))
                .Where(b => b.Lacking.Count > 0)
                .Select(b => $"{b.b.Code} names no lot of {string.Join(", ", b.Lacking)}."),
            .. a.Roles.Findings.Where(f => f.Gravity == Gravity.Look).Select(f => f.What),
            .. a.Candle.Picture is { } named && Picture is null
                ? [$"The picture '{named.Name}' was not at hand, or cannot be used."]
                : Array.Empty<string>(),
            .. a.Candle.Packaging is null ? ["What it is packed in is not declared."] : Array.Empty<string>(),
        ];

    /// <summary>What it finds, for programs.</summary>
    public TechnicalFileReport Report =>
        new(
            a.Id,
            a.Edition.Id,
            version,
            [.. RiskLines.Select(RiskReport.Of)],
            Missing,
            [
                .. Keeps.Select(k => new KeepReport(
                    k.Place.Code.Text,
                    k.Rule?.Years,
                    k.Rule is { } rule && LastSent is { } last ? IsoDay.Plain(last.AddYears(rule.Years)) : null,
                    k.Rule?.Clause.Text
                )),
            ]
        );

    /// <summary>The file.</summary>
    public KeptRecord Make() =>
        new(
            "Technical file",
            a.Candle.Name,
            [
                $"{a.Id}, version {version}, {IsoDay.Plain(a.AsOf)}. {a.Edition.Name}; sold in {string.Join(", ", a.Places.Select(p => p.Name))}.",
                "It helps; it does not replace local law or a competent person, who reads and signs it.",
            ],
            [
                new RecordSection("1 Description", [Description(), .. Picture is null ? Array.Empty<SheetBlock>() : [Picture]]),
                new RecordSection("2 Composition and materials", [.. Materials()]),
                new RecordSection("3 Risks", [.. Risks()]),
                new RecordSection("4 Standards", Standards()),
                a.Kind.Burns ? new RecordSection("5 Burn tests", TestRecord.Tested(tests)) : new RecordSection("5 Tests", [.. Tests()]),
                new RecordSection("6 Classification", [.. Classification()]),
                new RecordSection("7 Label", [.. Label()]),
                new RecordSection("8 Batches", Batches()),
                new RecordSection("9 Complaints and accidents", Incidents()),
                new RecordSection(
                    "10 What is missing",
                    [.. RecordSection.Texts(Missing.DefaultIfEmpty("Nothing that the program can see."))]
                ),
                new RecordSection("11 What was not looked at", [.. RecordSection.Texts(a.Edition.DoesNotCover.Select(a.Kind.Say))]),
                new RecordSection("12 Changes since the last version", [.. Changes()]),
                new RecordSection("13 Keeping and signature", [.. Keeping()]),
            ]
        );

    private SheetBlock Description() =>
        RecordSection.Pairs([
            (
                "Kind",
                $"{(a.Kind.Id == ProductKind.Usual ? "candle" : a.Kind.Name)} for {(a.Candle.Use == CandleUse.Outdoor ? "outdoors" : "indoors")}"
            ),
            (
                "Contents",
                a.Candle.NetVolume is { } volume
                    ? $"{FigureFormat.English.Declared(volume.Value)} ml"
                    : $"{FigureFormat.English.Declared(a.Candle.NetMass.Value)} g"
            ),
            a.Candle.Vessel is null
                ? ("Form", "stands by itself, without a vessel")
                : ("Vessel", $"{a.Vessel.Name}, {a.Vessel.Material}, {a.Vessel.Brimful} to the brim"),
            .. a.Kind.Burns
                ? new[]
                {
                    (
                        "Wicks",
                        $"{a.Candle.Wicks.Count} x {a.Candle.Wicks.Kind ?? "kind not declared"}{(a.Vessel.Pieces > 1 ? $" in each of {a.Vessel.Pieces} pieces" : "")}"
                    ),
                }
                : Array.Empty<(string, string)>(),
            ("Maker", a.Roles.Maker.OnOneLine),
            .. a.Roles.Others.Select(o => (o.Role == MarketRole.Importer ? "Importer" : "Responsible person", o.Party.OnOneLine)),
            ("Identified by", a.BatchCode ?? "the batch code on each label"),
            ("Article number", a.Candle.Gtin?.ToString() ?? "none"),
            ("Answers", Answers(a.Candle.Answers, a.Kind)),
        ]);

    private static string Answers(SafetyAnswers answers, ProductKind kind) =>
        string.Join(
            "; ",
            Enum.GetValues<SafetyQuestion>()
                .Where(q => kind.Burns || q != SafetyQuestion.MetalCoreWick)
                .Select(q =>
                    $"{Words(q)}: {answers.To(q) switch
                    {
                        true => "yes",
                        false => "no",
                        _ => "not answered",
                    }}"
                )
                .Append(
                    $"claims: {(answers.Claims is null ? "not answered" : answers.Claims.Count == 0 ? "none" : string.Join(", ", answers.Claims))}"
                )
        );

    private static string Words(SafetyQuestion question) =>
        question switch
        {
            SafetyQuestion.LooksLikeFood => "looks like food",
            SafetyQuestion.ForChildren => "draws children",
            SafetyQuestion.Glitter => "plastic glitter",
            _ => "metal in the wick",
        };

    private IEnumerable<SheetBlock> Materials()
    {
        Composed.Recipe recipe = a.Composition.Recipe;
        yield return new SheetTable(
            [34, 12, 54],
            ["Material", "Share", "From, document"],
            [
                .. recipe.Waxes.Select(w => new[] { w.Wax.Name, FigureFormat.English.About(w.Share), w.Wax.Supplier }),
                .. recipe.Oils.Select(o =>
                    new[]
                    {
                        o.Oil.Name,
                        FigureFormat.English.About(o.Share),
                        $"{o.Oil.Supplier}, {o.Oil.Document}, {IsoDay.Plain(o.Oil.Revised)}",
                    }
                ),
                .. recipe.Extras.Select(e => new[] { e.Extra.Name, FigureFormat.English.About(e.Share), e.Extra.Supplier }),
            ]
        );
        yield return new SheetText(a.Kind.Say("Substances of the finished candle"), Strong: true);
        yield return new SheetTable(
            [40, 16, 16, 28],
            ["Substance", "CAS", "At most", "Classes that count"],
            [
                .. a.Substances.Select(s =>
                    new[]
                    {
                        s.Name,
                        s.Ingredient.Identity.Cas?.Text ?? "-",
                        FigureFormat.English.AtMost(s.Ingredient.WholeHigh),
                        s.IsKnown ? string.Join(", ", s.Hazards.Select(h => h.Category.Code)) : "not known",
                    }
                ),
            ]
        );
        if (a.Candle.Packaging is { } packaging)
        {
            yield return new SheetText("Packaging", Strong: true);
            yield return new SheetTable(
                [40, 30, 30],
                ["Part", "Material", "One weighs"],
                [
                    .. packaging.Select(p =>
                        new[]
                        {
                            p.Part,
                            $"{p.Material.ToString().ToLowerInvariant()}{(p.Mark is null ? "" : $", {p.Mark}")}",
                            p.Weight.ToString(),
                        }
                    ),
                ]
            );
        }
    }

    private IEnumerable<SheetBlock> Risks()
    {
        yield return new SheetText(
            a.Kind.Say(
                "Likelihood and severity without measures, 1 to 5: common practice, no source; a competent person weighs them for this candle."
            )
        );
        yield return new SheetTable(
            [24, 6, 6, 30, 26, 8],
            ["Risk", "L", "S", "Measure", "Proof", "Met"],
            [
                .. RiskLines.Select(r =>
                    new[]
                    {
                        r.Row.Risk,
                        $"{r.Row.Likelihood}",
                        $"{r.Row.Severity}",
                        r.Row.Measure,
                        r.Proof,
                        r.IsInQuestion
                            ? "review"
                            : r.Holds switch
                            {
                                true => "yes",
                                false => "NO",
                                _ => "?",
                            },
                    }
                ),
            ]
        );
    }

    private IReadOnlyList<SheetBlock> Standards() =>
        RecordSection.Table(
            [20, 35, 45],
            ["Standard", "About", "Applied"],
            [.. lawbook.Safety.File.Value.Standards.Where(_ => a.Kind.Burns).Select(s => new[] { s.Name, s.About, s.Applied })],
            "None is named."
        );

    // What does not burn is tested by nobody here; of a liquid the figures are named with their document.
    private IEnumerable<SheetBlock> Tests()
    {
        if (a.Candle.Liquid is { } liquid)
        {
            yield return RecordSection.Pairs(
                ("Flash point", liquid.FlashPoint is { } flash ? $"{flash} ({flash.Method})" : "not measured"),
                ("Initial boiling point", liquid.Boiling?.ToString() ?? "not measured"),
                ("Viscosity at 40 °C", liquid.Viscosity?.ToString() ?? "not measured"),
                (
                    "Sustained combustion",
                    liquid.SustainsCombustion switch
                    {
                        true => "positive",
                        false => "negative",
                        _ => "not tested",
                    }
                ),
                ("Document", liquid.Document ?? "none named")
            );
        }

        yield return new SheetText(
            $"No test of a {a.Kind.Name} in use is kept by the program: note here what was tried, by whom and when."
        );
    }

    private IEnumerable<SheetBlock> Classification()
    {
        IReadOnlyList<Classified.ClassResult> classes = a.Classification.Classes;
        foreach (
            SheetBlock block in RecordSection.Table(
                [26, 44, 30],
                ["Class", "How it was found", "Where it stands"],
                [
                    .. classes.Select(c =>
                        new[] { $"{c.Category.Code} ({c.Statement})", a.Kind.Say(c.Working.Sentence), c.Working.Clause.Text }
                    ),
                ],
                "No class is reached on the declared data."
            )
        )
        {
            yield return block;
        }

        foreach (string open in a.Unassessed)
        {
            yield return new SheetText($"Not assessed: {a.Kind.Say(open)}");
        }
    }

    private IEnumerable<SheetBlock> Label()
    {
        if (a.Label.Pictograms.Count > 0)
        {
            yield return new SheetPictograms([.. a.Label.Pictograms.Select(p => p.Code.Code)]);
        }

        yield return RecordSection.Pairs(
            ("Signal word", a.Label.SignalWord?.Text ?? "none"),
            ("Statements", string.Join(", ", a.Label.All.Select(c => c.Text).DefaultIfEmpty("none"))),
            ("Substances named", string.Join(", ", a.Label.Named.Select(n => n.Name).DefaultIfEmpty("none"))),
            ("UFI", a.Ufi ?? "none"),
            ("Languages", string.Join(", ", a.Languages.Select(l => l.Name)))
        );
        foreach (SheetBlock drawing in Labels)
        {
            yield return drawing;
        }

        if (NoLabel.Length > 0)
        {
            yield return new SheetText(
                $"There is no drawing of the label: {(a.StopsSale ? "what stops the sale is said under 10." : NoLabel)}"
            );
        }
    }

    private IReadOnlyList<SheetBlock> Batches() =>
        RecordSection.Table(
            [20, 16, 14, 14, 36],
            ["Batch", "Poured", "Made", "Sent", "Lots"],
            [
                .. batches.Select(b =>
                    new[]
                    {
                        b.Code,
                        IsoDay.Plain(b.Poured),
                        b.Made is { } made ? $"{made}" : "not noted",
                        $"{catalogue.OfKind<Dispatch>().Where(d => d.Batch.Id == b.Id).Sum(d => d.Pieces)}",
                        b.Lots.Count == 0 ? "none named" : string.Join(", ", b.Lots.Select(l => CodeOf(l.Id))),
                    }
                ),
            ],
            "None so far."
        );

    private string CodeOf(string lot) =>
        catalogue.OfKind<Lot>().FirstOrDefault(l => l.Id == lot) is { } found ? $"{found.CalledIn(catalogue)} {found.Code}" : lot;

    private IReadOnlyList<SheetBlock> Incidents() =>
        RecordSection.Table(
            [18, 14, 40, 28],
            ["Entry", "Known", "What happened", "Reports"],
            [
                .. IncidentClocks
                    .Of(catalogue, lawbook.Safety, a.AsOf)
                    .Where(c => c.Incident.Candle.Id == a.Candle.Id)
                    .GroupBy(c => c.Incident)
                    .Select(g =>
                        new[]
                        {
                            g.Key.Id,
                            IsoDay.Plain(g.Key.Known),
                            g.Key.Happened,
                            string.Join("; ", g.Select(c => $"{c.Clock?.Id} {ComplaintRecord.Words(c)}".Trim())),
                        }
                    ),
            ],
            "None is declared."
        );

    private IEnumerable<SheetBlock> Changes()
    {
        if (Earlier is null)
        {
            return [new SheetText("No earlier version was looked for: compare the folders of both with 'chandlery changes'.")];
        }

        if (Earlier.Then is not { } then)
        {
            return [new SheetText($"{Earlier.Called}: {Earlier.Why}")];
        }

        return
        [
            new SheetText($"Compared with {Earlier.Called}."),
            .. RecordSection.Table(
                [18, 10, 42, 30],
                ["What", "", "Text", "Why"],
                [
                    .. FileChanges
                        .Between(then, a)
                        .Select(c => new[] { c.Subject, c.Begins ? "now" : "before", a.Kind.Say(c.Text), a.Kind.Say(c.Why) }),
                ],
                "Nothing has changed of what is declared, classified and labelled."
            ),
        ];
    }

    private IEnumerable<SheetBlock> Keeping()
    {
        foreach ((Place place, KeepRow? rule) in Keeps)
        {
            if (rule is { } keep)
            {
                yield return new SheetText(
                    LastSent is { } last
                        ? $"{place.Name}: keep it {keep.Years} years after the last {Noun} was placed on the market: until {IsoDay.Plain(last.AddYears(keep.Years))} by the dispatches so far ({keep.Clause})."
                        : $"{place.Name}: keep it {keep.Years} years after the last {Noun} is placed on the market; no dispatch is declared yet ({keep.Clause})."
                );
            }
            else
            {
                yield return new SheetText($"{place.Name}: no rule is known on how long it is kept.");
            }
        }

        if (RegisterHead.Length > 0)
        {
            yield return new SheetText(RegisterHead);
        }

        yield return new SheetText("Place, date, name: ______________________________");
    }

    private IEnumerable<(Place Place, KeepRow? Rule)> Keeps =>
        a.Places.Select(p => (p, lawbook.Safety.For(lawbook.Safety.Recalls, p.Code)?.KeepOf(Kept.TechnicalFile)));

    private string Noun => a.Kind.Say("candle");

    private DateOnly? LastSent =>
        catalogue.OfKind<Dispatch>().Where(d => batches.Exists(b => b.Id == d.Batch.Id)).Select(d => (DateOnly?)d.On).Max();
}
