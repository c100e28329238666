using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads an edition of the law: <c>edition.yaml</c> and the files beside it, or those of the edition it is based on.</summary>
internal sealed class EditionReader(
    LawFiles files,
    LawCodes codes,
    SubstanceList substances,
    SheetSentenceReader sentences,
    IReadOnlyCollection<string> words
)
{
    public Edition Read(string id)
    {
        Fields head = files.Open($"law/{id}/edition.yaml");
        CheckName(head, "id", [id]);
        CheckName(head, "basedOn", files.Editions);
        head.NamedTexts("citedHere");
        IReadOnlyList<string> leavesOut = ReadGroups(head);
        List<HazardCategory> leavesOutResults = codes.Categories(head, "leavesOutResults");
        (List<ClassRule> rules, List<NotComputed> notComputed) = new ClassesReader(codes).Read(files.OpenFor(id, "classes.yaml"));
        (
            List<LabelElement> elements,
            List<PictogramPrecedence> pictograms,
            List<StatementPrecedence> statements,
            NamingRules naming,
            List<IngredientStatement> ingredients
        ) = new LabelElementsReader(codes).Read(files.OpenFor(id, "label-elements.yaml"));
        Requirement ufi = ReadRequirement(head.Group("ufi", "{ needed: no, clause: ... }"));
        var edition = new Edition
        {
            Id = id,
            Name = head.Text("name", "the law's name"),
            LookedUp = head.Day("lookedUp"),
            Sources = head.Texts("sources"),
            Covers = head.Texts("covers"),
            DoesNotCover = head.Texts("doesNotCover"),
            Amendments = [.. head.Groups("amendments").Select(ReadAmendment)],
            Relabelling = head.OptionalGroup("relabelling") is { } relabelling ? ReadRelabelling(relabelling) : null,
            Rules = [.. rules.Where(r => !leavesOut.Contains(r.Group)).Select(r => Without(r, leavesOutResults))],
            NotComputed = notComputed,
            Liquids = new LiquidsReader(codes).Read(files.OpenFor(id, "liquids.yaml")),
            Elements = elements,
            Pictograms = pictograms,
            Statements = statements,
            Naming = naming,
            IngredientStatements = [.. GoingOn(head, ingredients)],
            Packaging = new PackagingReader(codes).Read(files.OpenFor(id, "packaging.yaml")),
            Precautions = new PrecautionsReader(codes).Read(files.OpenFor(id, "precautions.yaml")),
            Wordings = [.. head.Groups("wordings").Select(ReadWording)],
            Formats = FormatReader.Read(files.OpenFor(id, "label-format.yaml")),
            Label = ReadLabel(head.Group("label", "{ shows: hazards, quantityUnits: [g], ... }")),
            NotForPublic = [.. head.Groups("notForPublic").Select(ReadBan)],
            Refuses = [.. head.Groups("refuses").Select(ReadRefusal)],
            IsKnownInPart = head.OptionalFlag("knownInPart") ?? false,
            Notices = [.. head.Groups("notices").Select(ReadNotice)],
            ClassificationClause = LawCodes.Citation(head, "classificationClause"),
            Ufi = ufi,
            PoisonCentres = ufi.Needed ? new PoisonCentresReader(codes).Read(files.OpenFor(id, "poison-centres.yaml")) : null,
            EmergencyTelephone = head.OptionalGroup("emergencyTelephone") is { } telephone
                ? ReadRequirement(telephone)
                : new Requirement(false, Citation.None),
            Harmonised = ReadHarmonised(head.Group("harmonised", "{ bind: yes, citedAs: ..., clause: ... }"), substances),
            Substances = substances,
            LocalWords = ReadLocalWords(head),
            SmallPackages = new SmallPackagesReader(codes).Read(files.OpenFor(id, "small-packages.yaml")),
            SafetySheet = new SafetySheetReader(codes, sentences, files.Editions).Read(files.OpenFor(id, "safety-sheet.yaml")),
        };
        head.Done();
        return edition;
    }

    // What the edition below lets end by an act that this law does not have goes on here.
    private IEnumerable<IngredientStatement> GoingOn(Fields head, List<IngredientStatement> ingredients)
    {
        var goingOn = new Dictionary<StatementCode, (Citation Clause, string Because)>();
        foreach (Fields row in head.Groups("goesOn"))
        {
            goingOn[codes.Statement(row, "statement")] = (LawCodes.Citation(row), row.Text("because", "a reason"));
            LawRows.Close(row);
        }

        return ingredients.Select(i =>
            goingOn.TryGetValue(i.Statement, out (Citation Clause, string Because) here)
                ? i with
                {
                    InForce = i.InForce with { Until = null },
                    Clause = here.Clause,
                    Stricter = here.Because,
                }
                : i
        );
    }

    private static void CheckName(Fields fields, string key, IReadOnlyCollection<string> known)
    {
        if (fields.OptionalText(key) is { } name && !known.Contains(name))
        {
            string near = Suggestion.DidYouMean(name, known);
            fields.Problems.Add(fields.PlaceOf(key), $"There is no edition of the law named '{name}'.", near);
        }
    }

    private IReadOnlyList<string> ReadGroups(Fields head)
    {
        List<string> known = [.. codes.Vocabulary.Categories.Select(c => c.Group).Distinct()];
        foreach (YamlScalar item in head.List("leavesOut").OfType<YamlScalar>().Where(i => !known.Contains(i.Text)))
        {
            string near = Suggestion.DidYouMean(item.Text, known);
            head.Problems.Add(item.Place, $"'{item.Text}' is no group of hazards.yaml.", near);
        }

        return head.Texts("leavesOut");
    }

    private static ClassRule Without(ClassRule rule, List<HazardCategory> results) =>
        rule switch
        {
            LimitRule limit => limit with { Rungs = [.. limit.Rungs.Where(r => !results.Contains(r.Result))] },
            AcuteToxicityRule acute => acute with { Bounds = [.. acute.Bounds.Where(b => !results.Contains(b.Result))] },
            _ => rule,
        };

    // The law's own statements are no words of ours: they stay as they are.
    private Dictionary<string, LocalWords> ReadLocalWords(Fields head)
    {
        var words = new Dictionary<string, Dictionary<string, string>>();
        foreach (Fields row in head.Groups("localWords"))
        {
            string language = row.Choice("language", [.. files.Folders("languages", "words.yaml")]);
            string word = row.Text("word", "draughts");
            string here = row.Text("here", "drafts");
            if (!words.TryGetValue(language, out Dictionary<string, string>? known))
            {
                words[language] = known = [];
            }

            if (!known.TryAdd(word, here))
            {
                row.Problems.Add(row.PlaceOf("word"), $"The word '{word}' stands here twice.");
            }

            row.Done();
        }

        return words.ToDictionary(w => w.Key, w => new LocalWords(w.Value));
    }

    private static Requirement ReadRequirement(Fields group)
    {
        var requirement = new Requirement(group.Flag("needed"), LawCodes.Citation(group));
        group.Done();
        return requirement;
    }

    private LabelRules ReadLabel(Fields group)
    {
        var label = new LabelRules
        {
            Shows = group.Enumeration("shows", LabelContent.Hazards),
            QuantityUnits =
            [
                .. group.Choices("quantityUnits", "g", "oz").Select(u => u == "oz" ? QuantityUnit.Ounces : QuantityUnit.Grams),
            ],
            QuantityUnitsClause = LawCodes.Citation(group, "quantityUnitsClause"),
            Warnings = group.Choices("warnings", [.. words]),
            LanguagesClause = LawCodes.Citation(group, "languagesClause"),
            WordingClause = LawCodes.Citation(group, "wordingClause"),
            StatementsClause = LawCodes.Citation(group, "statementsClause"),
            PictogramsClause = LawCodes.Citation(group, "pictogramsClause"),
            PictogramColoursClause = LawCodes.Citation(group, "pictogramColoursClause"),
            TextColourClause = LawCodes.Citation(group, "textColourClause"),
            DirectionClause = LawCodes.Citation(group, "directionClause"),
            ProductNameClause = LawCodes.Citation(group, "productNameClause"),
            SupplierClause = LawCodes.Citation(group, "supplierClause"),
            LeafletClause = LawCodes.Citation(group, "leafletClause"),
        };
        if (label.QuantityUnits.Count == 0)
        {
            group.Problems.Add(group.Place, "'quantityUnits' is missing.", "Write 'quantityUnits: [g]'.");
        }

        group.Done();
        return label;
    }

    private PublicBan ReadBan(Fields row)
    {
        var ban = new PublicBan(codes.CategoriesOrClasses(row, "hazards"), row.Text("says", "what it means"), LawCodes.Citation(row));
        row.Done();
        return ban;
    }

    private Refusal ReadRefusal(Fields row)
    {
        var refusal = new Refusal(
            codes.Papers(row, "papers"),
            codes.CategoriesOrClasses(row, "hazards"),
            row.Text("because", "a reason"),
            LawCodes.Citation(row)
        );
        LawRows.Close(row);
        return refusal;
    }

    private WordingChoice ReadWording(Fields row)
    {
        var choice = new WordingChoice(
            codes.Statements(row, "codes"),
            row.Text("taken", "where the wording stands"),
            row.Text("notTaken", "where the other stands"),
            row.Text("because", "a reason"),
            LawCodes.Citation(row),
            row.Text("confidence", "how it was checked")
        );
        row.Done();
        return choice;
    }

    private static Amendment ReadAmendment(Fields row)
    {
        var amendment = new Amendment(
            new InForce(row.Day("from"), null, row.OptionalDay("stockFrom")),
            row.Text("parts", "articles and points"),
            row.Text("says", "what it means"),
            LawCodes.Citation(row),
            row.Text("confidence", "how it was checked")
        );
        row.Done();
        return amendment;
    }

    private static RelabellingRules ReadRelabelling(Fields group)
    {
        var rules = new RelabellingRules(
            new InForce(group.OptionalDay("from"), null),
            (int)group.Number("graverMonths", 0, 120, "6"),
            (int)group.Number("otherMonths", 0, 120, "18"),
            LawCodes.Citation(group),
            group.Text("confidence", "how it was checked"),
            group.Text("stricter", "what is held of labels of the class before")
        );
        group.Done();
        return rules;
    }

    private static Notice ReadNotice(Fields row)
    {
        var notice = new Notice(row.Enumeration("when", NoticeWhen.Classified), row.Text("says", "the words"), LawCodes.Citation(row));
        row.Done();
        return notice;
    }

    private static NamedInOwnList ReadNamed(Fields row)
    {
        IReadOnlyList<string> cas = row.Texts("cas");
        foreach (string number in cas.Where(c => !CasNumber.Parse(c).Success))
        {
            row.Problems.Add(row.PlaceOf("cas"), $"{number} is not a valid CAS number.");
        }

        var named = new NamedInOwnList(cas, row.Text("says", "it is named in the batch of ..."), row.Text("confidence", "notice of ..."));
        row.Done();
        return named;
    }

    private static HarmonisedClasses ReadHarmonised(Fields group, SubstanceList substances)
    {
        bool bind = group.Flag("bind");
        var harmonised = new HarmonisedClasses(
            bind,
            group.Text("citedAs", "the list, {index} ({act})"),
            bind ? LawCodes.Citation(group) : Citation.None,
            group.Has("upTo") ? group.Choice("upTo", [.. substances.Table?.Rules.Acts.Select(a => a.Id) ?? []]) : "",
            group.OptionalText("later") ?? "",
            group.OptionalText("laterCitedAs") ?? ""
        )
        {
            Named = [.. group.Groups("named").Select(ReadNamed)],
        };
        group.Done();
        return harmonised;
    }
}
