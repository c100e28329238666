using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads the law's data files: the folder tree <c>data/</c>, given as texts by path.</summary>
public sealed class LawReader
{
    private static readonly Dictionary<string, ExposureRoute[]> Routes = new()
    {
        ["oral"] = [ExposureRoute.Oral],
        ["dermal"] = [ExposureRoute.Dermal],
        ["inhalation"] = [ExposureRoute.InhalationVapour, ExposureRoute.InhalationDust, ExposureRoute.InhalationGas],
    };

    private readonly IReadOnlyDictionary<string, string> files;
    private readonly Problems problems = new();
    private readonly HazardVocabulary vocabulary;
    private readonly Lock reading = new();
    private bool refusesAtOnce;

    // Editions share the files of the edition that they are based on.
    private readonly Dictionary<string, YamlMap> parsed = [];

    private LawReader(IReadOnlyDictionary<string, string> files)
    {
        this.files = files;
        vocabulary = ReadVocabulary();
    }

    /// <summary>Reads everything.</summary>
    /// <param name="files">Texts by path relative to <c>data/</c>, with forward slashes.</param>
    /// <param name="problems">Collects everything that is wrong.</param>
    /// <returns>The lawbook, or null when there are problems.</returns>
    public static Lawbook? Read(IReadOnlyDictionary<string, string> files, Problems problems)
    {
        var reader = new LawReader(files);
        Lawbook lawbook = reader.Open();
        lawbook.Editions.ReadAll();
        lawbook.Languages.ReadAll();
        lawbook.SheetWords.ReadAll();
        problems.AddRange(reader.problems.Found);
        return problems.None ? lawbook : null;
    }

    /// <summary>
    /// Reads what every run needs, and each edition and language when it is first asked for: for the program's own files, which
    /// its tests have read whole.
    /// </summary>
    /// <param name="files">Texts by path relative to <c>data/</c>, with forward slashes.</param>
    /// <param name="problems">Collects what is wrong with the part that is read at once.</param>
    /// <returns>
    /// The lawbook, or null when there are problems. An edition or a language that is wrong throws
    /// <see cref="InvalidDataException"/> when it is asked for.
    /// </returns>
    public static Lawbook? ReadWhenAsked(IReadOnlyDictionary<string, string> files, Problems problems)
    {
        var reader = new LawReader(files);
        Lawbook lawbook = reader.Open();
        problems.AddRange(reader.problems.Found);
        reader.refusesAtOnce = true;
        return problems.None ? lawbook : null;
    }

    private Lawbook Open()
    {
        string[] editions = Folders("law", "edition.yaml");
        string[] languages = Folders("languages", "statements.yaml");
        return new Lawbook(
            vocabulary,
            Shelf(editions, ReadEdition),
            [.. ReadPlaces()],
            new SubstanceList(
                [.. new SubstanceReader(vocabulary).Read(Open("substances/list.yaml"))],
                SubstanceReader.ReadAllergens(Open("substances/allergens.yaml"))
            ),
            Shelf(languages, folder => LanguageReader.Read(folder, Open)),
            ReadBurning(),
            Shelf(
                Folders("languages", "safety-data-sheet.yaml"),
                folder => SafetySheetReader.ReadWords(Open($"languages/{folder}/safety-data-sheet.yaml"))
            ),
            SafetySheetReader.ReadAdvice(Open("safety-data-sheet/advice.yaml"))
        );
    }

    // The folders of a kind that hold a file, in order.
    private string[] Folders(string kind, string file) =>
        [
            .. files
                .Keys.Select(k => k.Split('/'))
                .Where(parts => parts.Length == 3 && parts[0] == kind && parts[2] == file)
                .Select(parts => parts[1])
                .Order(StringComparer.Ordinal),
        ];

    // Candles are assessed on several threads, and what is read on the way shares the parsed files.
    private Shelf<T> Shelf<T>(string[] codes, Func<string, T> read)
        where T : class =>
        new(
            codes,
            code =>
            {
                lock (reading)
                {
                    T thing = read(code);
                    return refusesAtOnce && !problems.None ? throw new InvalidDataException(problems.Found[0].ToString()) : thing;
                }
            }
        );

    private HazardVocabulary ReadVocabulary()
    {
        var categories = new List<HazardCategory>();
        Fields fields = Open("law/hazards.yaml");
        foreach (Fields group in fields.Groups("groups"))
        {
            string name = group.Text("group", "skin sensitisation");
            HazardArea area = Enum.Parse<HazardArea>(group.Choice("area", "physical", "health", "environment"), ignoreCase: true);
            string plain = group.Text("plain", "what the class means");
            int severity = 0;
            foreach (Fields row in group.Groups("worstFirst"))
            {
                categories.Add(
                    new HazardCategory(
                        categories.Count,
                        row.Text("class", "Skin Sens."),
                        row.OptionalText("category") ?? "",
                        row.OptionalText("variant") ?? "",
                        row.Text("statement", "H317"),
                        name,
                        severity++,
                        plain,
                        area
                    )
                );
                row.Done();
            }

            group.Done();
        }

        fields.Done();
        return new HazardVocabulary(categories);
    }

    private Edition ReadEdition(string id)
    {
        Fields head = Open($"law/{id}/edition.yaml");
        head.Text("id", id);
        IReadOnlyList<string> leavesOut = head.Texts("leavesOut");
        List<HazardCategory> leavesOutResults = ReadHazards(head, "leavesOutResults");
        Fields classes = OpenFor(id, "classes.yaml");
        List<ClassRule> rules =
        [
            .. classes.Groups("rules").Select(ReadRule).Where(r => !leavesOut.Contains(r.Group)).Select(r => Without(r, leavesOutResults)),
        ];
        List<NotComputed> notComputed = [.. classes.Groups("notComputed").Select(ReadNotComputed)];
        classes.Done();

        Fields label = OpenFor(id, "label-elements.yaml");
        Fields naming = label.Group("naming", "{ normallyEnough: 4, clause: CLP Art. 18(3) }");
        var edition = new Edition(
            id,
            head.Text("name", "the law's name"),
            head.Day("lookedUp"),
            head.Texts("sources"),
            head.Texts("covers"),
            head.Texts("doesNotCover"),
            rules,
            notComputed,
            [.. label.Groups("elements").SelectMany(ReadElement)],
            [.. label.Groups("pictogramPrecedence").Select(ReadPictogramPrecedence)],
            [
                .. label.Groups("statementPrecedence").Select(ReadStatementPrecedence),
                .. label.Groups("statementCombination").Select(ReadStatementCombination),
            ],
            (int)naming.Number("normallyEnough", 0, 100, "4"),
            naming.Text("clause", "CLP Art. 18(3)"),
            ReadPrecautions(OpenFor(id, "precautions.yaml")),
            FormatReader.Read(OpenFor(id, "label-format.yaml")),
            Enum.Parse<LabelKind>(head.Choice("labelKind", "clp", "ghs", "consumer"), ignoreCase: true),
            head.OptionalFlag("harmonisedClassesBind") ?? false,
            ReadRequirement(head, "ufi"),
            ReadRequirement(head, "emergencyTelephone"),
            ReadSmallPackages(OpenFor(id, "small-packages.yaml")),
            new SafetySheetReader(vocabulary).Read(OpenFor(id, "safety-sheet.yaml"))
        );
        head.OptionalText("basedOn");

        // The clause is a note for readers of the data; each named sensitiser carries its own.
        naming.OptionalText("sensitisersAlways");
        naming.Done();
        label.Done();
        head.Done();
        return edition;
    }

    // A file that an edition does not have is taken from the edition that it is based on.
    private Fields OpenFor(string id, string file)
    {
        string folder = id;
        for (int depth = 0; depth < 4 && !files.ContainsKey($"law/{folder}/{file}"); depth++)
        {
            string? above = Open($"law/{folder}/edition.yaml").OptionalText("basedOn");
            if (above is null)
            {
                break;
            }

            folder = above;
        }

        return Open($"law/{folder}/{file}");
    }

    private static ClassRule Without(ClassRule rule, List<HazardCategory> results) =>
        rule switch
        {
            LimitRule limit => limit with { Rungs = [.. limit.Rungs.Where(r => !results.Contains(r.Result))] },
            AcuteToxicityRule acute => acute with { Bounds = [.. acute.Bounds.Where(b => !results.Contains(b.Result))] },
            _ => rule,
        };

    private static Requirement ReadRequirement(Fields head, string key)
    {
        Fields? group = head.OptionalGroup(key);
        if (group is null)
        {
            return new Requirement(false, "");
        }

        var requirement = new Requirement(group.OptionalFlag("needed") ?? false, group.Text("clause", "a clause"));
        group.Done();
        return requirement;
    }

    private SmallPackageRules ReadSmallPackages(Fields fields)
    {
        var rows = new List<Relief>();
        foreach (Fields row in fields.Groups("relief"))
        {
            IReadOnlyList<string> what = row.Texts("leaveOff");
            rows.Add(
                new Relief(
                    ReadHazards(row, "hazards"),
                    what.Contains("hazard"),
                    what.Contains("precautionary"),
                    row.OptionalFlag("notForPublic") ?? false,
                    row.Text("clause", "1.5.2.1")
                )
            );
            row.Done();
        }

        var rules = new SmallPackageRules(
            new Millilitres(fields.Number("upToMl", -1, 100_000, "125")),
            fields.Text("clause", "1.5.2.1"),
            rows
        );
        fields.Done();
        return rules;
    }

    private ClassRule ReadRule(Fields fields)
    {
        string group = fields.Text("group", "skin sensitisation");
        string method = fields.Choice("method", "each-ingredient", "weighted-sum", "acute-toxicity-estimate");
        string clause = fields.Text("clause", "CLP Annex I, 3.4.3.3");
        string confidence = fields.Text("confidence", "from memory");
        string stricter = fields.OptionalText("stricter") ?? "";
        var inForce = new InForce(fields.OptionalDay("from"), fields.OptionalDay("until"), fields.OptionalDay("existingMixturesFrom"));
        IReadOnlyList<HazardCategory> groupHazards = [.. vocabulary.Categories.Where(c => c.Group == group)];
        if (groupHazards.Count == 0)
        {
            problems.Add(fields.PlaceOf("group"), $"'{group}' is no group of hazards.yaml.");
        }

        IReadOnlyList<HazardCategory> names = fields.Take("names") switch
        {
            null => [],
            YamlScalar { Text: "true" } => groupHazards,
            YamlList => ReadHazards(fields, "names"),
            { } other => Wrong(other),
        };
        ClassRule rule =
            method == "acute-toxicity-estimate"
                ? ReadAcuteToxicity(fields, group, clause, confidence, stricter, inForce, names)
                : new LimitRule(
                    group,
                    clause,
                    confidence,
                    stricter,
                    inForce,
                    names,
                    method == "weighted-sum",
                    [.. fields.Groups("rungs").Select(ReadRung)],
                    ReadImplication(fields),
                    ReadElicitation(fields),
                    ReadNonAdditive(fields)
                );
        fields.Done();
        return rule;
    }

    private IReadOnlyList<HazardCategory> Wrong(YamlValue value)
    {
        problems.Add(value.Place, "'names' must be true or a list of hazards.");
        return [];
    }

    private AcuteToxicityRule ReadAcuteToxicity(
        Fields fields,
        string group,
        string clause,
        string confidence,
        string stricter,
        InForce inForce,
        IReadOnlyList<HazardCategory> names
    )
    {
        ExposureRoute[] routes = Routes[fields.Choice("route", [.. Routes.Keys])];
        var bounds = new List<ToxicityBound>();
        foreach (Fields row in fields.Groups("bounds"))
        {
            HazardCategory result = ReadHazard(row, "result");
            var upTo = new Dictionary<ExposureRoute, double> { [routes[0]] = row.Number("upTo", 0, 1e6, "2000") };
            var point = new Dictionary<ExposureRoute, double> { [routes[0]] = row.Number("pointEstimate", 0, 1e6, "500") };
            if (routes.Length > 1)
            {
                upTo[ExposureRoute.InhalationDust] = row.Number("dustUpTo", 0, 1e6, "5");
                point[ExposureRoute.InhalationDust] = row.Number("dustPointEstimate", 0, 1e6, "1.5");
                upTo[ExposureRoute.InhalationGas] = row.Number("gasUpTo", 0, 1e6, "20000");
                point[ExposureRoute.InhalationGas] = row.Number("gasPointEstimate", 0, 1e6, "4500");
            }

            bounds.Add(new ToxicityBound(result, upTo, point, new MassPercent(row.Number("ignoreBelowPercent", 0, 100, "1"))));
            row.Done();
        }

        Fields unknown = fields.Group("unknown", "{ takenOutAbovePercent: 10, saidFromPercent: 1, clause: 3.1.3.6.2 }");
        var unknownToxicity = new UnknownToxicity(
            new MassPercent(unknown.Number("takenOutAbovePercent", 0, 100, "10")),
            new MassPercent(unknown.Number("saidFromPercent", 0, 100, "1")),
            unknown.Text("clause", "3.1.3.6.2")
        );
        unknown.Done();
        string unit = fields.Text("unit", "mg/kg");
        return new AcuteToxicityRule(group, clause, confidence, stricter, inForce, names, routes, unit, unknownToxicity, bounds);
    }

    private Rung ReadRung(Fields fields)
    {
        HazardCategory result = ReadHazard(fields, "result");
        var limit = new MassPercent(fields.Number("limitPercent", 0, 100, "1"));
        var terms = new List<Term>();
        foreach (Fields term in fields.Groups("terms"))
        {
            terms.Add(
                new Term(
                    ReadHazards(term, "hazards"),
                    term.OptionalNumber("weight", 0, 1000) ?? 1,
                    term.Has("m") ? Enum.Parse<MWeight>(term.Choice("m", "acute", "chronic"), ignoreCase: true) : MWeight.None,
                    new MassPercent(term.OptionalNumber("ignoreBelowPercent", 0, 100) ?? 0)
                )
            );
            term.Done();
        }

        fields.Done();
        return new Rung(result, terms, limit);
    }

    private Implication? ReadImplication(Fields fields)
    {
        Fields? group = fields.OptionalGroup("impliedBy");
        if (group is null)
        {
            return null;
        }

        var implication = new Implication(ReadHazards(group, "results"), ReadHazard(group, "gives"), group.Text("clause", "3.3.2.2"));
        group.Done();
        return implication;
    }

    private NonAdditive? ReadNonAdditive(Fields fields)
    {
        Fields? group = fields.OptionalGroup("whereAddingMayFail");
        if (group is null)
        {
            return null;
        }

        var method = new NonAdditive(
            group.Text("clause", "3.2.3.3.4"),
            group.Text("confidence", "from memory"),
            [.. group.Groups("rungs").Select(ReadRung)]
        );
        group.Done();
        return method;
    }

    private Elicitation? ReadElicitation(Fields fields)
    {
        Fields? group = fields.OptionalGroup("elicitation");
        if (group is null)
        {
            return null;
        }

        var limits = new List<KeyValuePair<HazardCategory, MassPercent>>();
        foreach (Fields row in group.Groups("limits"))
        {
            limits.Add(new(ReadHazard(row, "hazard"), new MassPercent(row.Number("fromPercent", 0, 100, "0.1"))));
            row.Done();
        }

        var elicitation = new Elicitation(
            group.Text("statement", "EUH208"),
            group.Text("clause", "Table 3.4.6"),
            group.Number("fractionOfSpecificLimit", 0, 1, "0.1"),
            limits
        );
        group.Done();
        return elicitation;
    }

    private NotComputed ReadNotComputed(Fields fields)
    {
        var row = new NotComputed(ReadHazards(fields, "hazards"), fields.Text("why", "a reason"), fields.Text("clause", "2.6"));
        fields.Done();
        return row;
    }

    private IEnumerable<LabelElement> ReadElement(Fields fields)
    {
        IReadOnlyList<HazardCategory> hazards = ReadHazards(fields, "hazards");
        string? pictogram = fields.OptionalText("pictogram");
        string? signalWord = fields.Has("signalWord") ? fields.Choice("signalWord", "Danger", "Warning") : null;
        string clause = fields.Text("clause", "Table 3.4.7");
        fields.Done();
        return hazards.Select(h => new LabelElement(h, pictogram, signalWord, clause));
    }

    private static PictogramPrecedence ReadPictogramPrecedence(Fields fields)
    {
        var row = new PictogramPrecedence(
            fields.Text("whenPresent", "GHS06"),
            fields.OptionalText("whenStatement"),
            fields.Text("leaveOff", "GHS07"),
            fields.Texts("calledForOnlyBy"),
            fields.Text("clause", "Art. 26")
        );
        fields.Done();
        return row;
    }

    private static StatementPrecedence ReadStatementPrecedence(Fields fields)
    {
        string present = fields.Text("whenPresent", "H410");
        string gone = fields.Text("leaveOff", "H400");
        var row = new StatementPrecedence([present, gone], present, [gone], fields.Text("clause", "Art. 27"));
        fields.Done();
        return row;
    }

    private static StatementPrecedence ReadStatementCombination(Fields fields)
    {
        IReadOnlyList<string> all = fields.Texts("all");
        var row = new StatementPrecedence(all, fields.Text("use", "H410"), all, fields.Text("clause", "Art. 27"));
        fields.OptionalText("stricter");
        fields.Done();
        return row;
    }

    private static PrecautionRules ReadPrecautions(Fields fields)
    {
        Fields limit = fields.Group("limit", "{ most: 6, clause: CLP Art. 28(3) }");
        Fields disposal = fields.Group("disposal", "{ code: P501, clause: CLP Art. 28(2) }");
        var offers = new List<PrecautionOffer>();
        foreach (Fields row in fields.Groups("precautions"))
        {
            offers.Add(
                new PrecautionOffer(
                    row.Text("code", "P501"),
                    row.Texts("for"),
                    (int)row.Number("rank", 0, 1000, "10"),
                    Enum.Parse<PrecautionUse>(row.Choice("use", "must", "keep", "drop"), ignoreCase: true),
                    row.OptionalText("coveredBy"),
                    row.Text("because", "a reason")
                )
            );
            row.Done();
        }

        var rules = new PrecautionRules(
            (int)limit.Number("most", 0, 100, "6"),
            limit.Text("clause", "Art. 28(3)"),
            disposal.Text("code", "P501"),
            disposal.Text("clause", "Art. 28(2)"),
            offers
        );
        limit.Done();
        disposal.Done();
        fields.Done();
        return rules;
    }

    private IEnumerable<Place> ReadPlaces()
    {
        Fields fields = Open("places.yaml");
        var places = new List<Place>();
        foreach (Fields row in fields.Groups("places"))
        {
            bool either = row.Has("eitherOf");
            row.OptionalText("note");
            places.Add(
                new Place(
                    row.Text("code", "IE"),
                    row.Text("name", "Ireland"),
                    row.Text("edition", "eu-clp"),
                    row.Texts(either ? "eitherOf" : "languages"),
                    either
                )
            );
            row.Done();
        }

        fields.Done();
        return places;
    }

    private BurnAdvice ReadBurning()
    {
        Fields fields = Open("burning.yaml");
        Fields distance = fields.Group("distanceBetweenCandlesCm", "{ indoor: 10, outdoor: 20 }");
        double Value(string key)
        {
            Fields group = fields.Group(key, "{ value: 4 }");
            group.OptionalText("source");
            double value = group.Number("value", 0, 1000, "4");
            group.Done();
            return value;
        }

        distance.OptionalText("source");
        var advice = new BurnAdvice(
            distance.Number("indoor", 0, 1000, "10"),
            distance.Number("outdoor", 0, 1000, "20"),
            Value("firstBurnHoursPerCm"),
            Value("longestBurnHours"),
            Value("remainingWaxMm")
        );
        distance.Done();
        fields.OptionalGroup("wickSpacingCm");
        fields.Done();
        return advice;
    }

    private HazardCategory ReadHazard(Fields fields, string key)
    {
        string code = fields.Text(key, "Skin Sens. 1B");
        return FindHazard(code, fields.PlaceOf(key));
    }

    private List<HazardCategory> ReadHazards(Fields fields, string key) =>
        [.. fields.List(key).Select(item => FindHazard((item as YamlScalar)?.Text ?? "?", item.Place))];

    private HazardCategory FindHazard(string code, TextPlace place)
    {
        if (vocabulary.Find(code) is { } hazard)
        {
            return hazard;
        }

        string? near = Suggestion.Nearest(code, vocabulary.Categories.Select(c => c.Code));
        problems.Add(place, $"'{code}' is no hazard of hazards.yaml.", near is null ? "" : $"Did you mean '{near}'?");
        return vocabulary.Categories[0];
    }

    private Fields Open(string path)
    {
        string name = "data/" + path;
        if (!files.TryGetValue(path, out string? text))
        {
            problems.Add(new TextPlace(name, 0, 0), "The file is missing.", "Restore it from the program's own data.");
            return new Fields(new YamlMap([], new TextPlace(name, 0, 0)), new Problems());
        }

        if (!parsed.TryGetValue(path, out YamlMap? map))
        {
            map = YamlText.Read(text, name, problems) ?? new YamlMap([], new TextPlace(name, 0, 0));
            parsed[path] = map;
        }

        return new Fields(map, problems);
    }
}
