using System.Collections.Concurrent;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Limits;
using Chandlery.Core.Notified;
using Chandlery.Yaml;

namespace Chandlery.Core.Assessed;

/// <summary>Takes a candle or a batch all the way from its declarations to an assessment.</summary>
/// <param name="lawbook">Law and languages.</param>
/// <param name="catalogue">The maker's declarations.</param>
/// <param name="asOf">The day that decides which rules hold.</param>
public sealed class Assessor(Lawbook lawbook, Catalogue catalogue, DateOnly asOf)
{
    // Of candles that share a UFI with another composition; the rest is found in the same way once these are mended.
    private const int MostNamed = 6;

    private readonly ConcurrentDictionary<string, LawInForce> laws = new();
    private readonly ConcurrentDictionary<(string Edition, PhysicalState State, DateOnly? OnMarketSince), LawInForce> lawsForProducts =
        new();
    private readonly JudgedRecipes recipes = new();
    private readonly ConcurrentDictionary<string, (MarketRoles Roles, Maker OnLabel)> rolesAt = new();
    private readonly UfiTwins twins = new(catalogue);
    private readonly NotificationKin kin = new(catalogue);
    private readonly ConcurrentDictionary<(Oil, string), IReadOnlyList<string>> contradictions = new(OilAndEdition.Instance);

    /// <summary>One assessment for each edition that rules where the candle is sold, in the order of the places.</summary>
    /// <param name="declaration">A candle or a batch.</param>
    /// <param name="onlyPlace">Restricts the answer to one place of sale; null for all of them.</param>
    /// <param name="problems">
    /// Collects what is wrong; the result is empty when anything is wrong with this declaration. What follows from wrong files is
    /// one problem that names them.
    /// </param>
    public IReadOnlyList<Assessment> Assess(IDeclaration declaration, string? onlyPlace, Problems problems)
    {
        var own = new Problems();
        IReadOnlyList<Assessment> assessments = AssessOne(declaration, onlyPlace, own);
        problems.AddRange(own.Found.Where(p => p.CausedBy.Count == 0).Distinct());
        List<string> causes = [.. own.Found.SelectMany(p => p.CausedBy).Distinct()];
        if (causes.Count > 0)
        {
            string have = causes.Count == 1 ? "has" : "have";
            problems.Add(
                new Problem(declaration.Place, $"Not assessed, because {string.Join(" and ", causes)} {have} problems.", "")
                {
                    CausedBy = causes,
                }
            );
        }

        return own.None ? assessments : [];
    }

    private List<Assessment> AssessOne(IDeclaration declaration, string? onlyPlace, Problems problems)
    {
        if (catalogue.WrongTwin(declaration) is { } twin)
        {
            problems.AddCausedBy(twin.File, declaration.Place, $"{twin.File} has problems and the same name.");
            return [];
        }

        var batch = declaration as Batch;
        Candle? candle = batch is null ? declaration as Candle : catalogue.Find<Candle>(batch.Candle, problems);
        if (candle is null)
        {
            return [];
        }

        ProductKind? kind = KindCheck.Of(candle, lawbook.Kinds, problems);
        Vessel? vessel =
            candle.Vessel is { } named ? catalogue.Find<Vessel>(named, problems)
            : candle.Size is { } size ? Vessel.Standing(candle, size)
            : null;
        Wax? wax = catalogue.Find<Wax>(candle.Wax, problems);
        Maker? maker = TheMaker(candle, problems);
        Recipe? recipe = batch is null
            ? RecipeMaker.FromPlan(candle, catalogue, problems)
            : RecipeMaker.FromBatch(batch, candle, catalogue, problems);
        List<Place> places = PlacesOf(candle, onlyPlace, problems);
        if (kind is not null && wax is not null)
        {
            KindCheck.CheckBase(candle, kind, wax, problems);
        }

        if (kind is null || vessel is null || wax is null || maker is null || recipe is null || places.Count == 0)
        {
            return [];
        }

        var subject = new Subject(
            candle,
            batch,
            maker,
            vessel,
            recipes.Of(recipe, candle.Liquid),
            LimitChecker.Check(candle, KindCheck.LimitedAs(candle, kind), vessel, wax, recipe)
        )
        {
            Kind = kind,
            Wax = wax,
            Declarant = maker,
            Contents = Contents.Of(vessel, candle, wax),
        };
        var assessments = new List<Assessment>();
        foreach (IGrouping<string, Place> group in places.GroupBy(p => p.EditionId))
        {
            Edition edition = lawbook.Edition(group.Key);
            List<Language> languages = LanguagesOf(candle, [.. group], edition, problems);
            if (asOf < edition.KnownFrom)
            {
                problems.Add(NoLawYet(edition, asOf));
                continue;
            }

            Assessment assessment = Assess(subject, edition, [.. group], languages);
            NoteLacking(assessment, problems);
            assessments.Add(assessment);
        }

        return assessments;
    }

    // The day is nobody's declaration: what is wrong stands at the law, and so is said once for all candles.
    internal static Problem NoLawYet(Edition edition, DateOnly day) =>
        new(
            new TextPlace(edition.Id, 0, 0),
            $"No law is known for {IsoDay.Plain(day)}: what is known of {edition.Name} begins on {IsoDay.Plain(edition.KnownFrom)}.",
            "Ask for a later day."
        );

    // A statement is the law's text in that language or nothing: neither another language's nor a wording of our own.
    private void NoteLacking(Assessment assessment, Problems problems)
    {
        foreach (Language language in assessment.Languages)
        {
            List<string> lacking = [.. StatementText.Lacking(language, assessment.Label).Select(c => c.Text)];
            if (lacking.Count > 0)
            {
                string why = lawbook.WithoutTexts.GetValueOrDefault(language.Code) is { } because ? $" {because}." : "";
                problems.Add(
                    assessment.Candle.Place,
                    $"There is no text in {language.Name} of {string.Join(", ", lacking)}, which the label must print ({assessment.Edition.Label.WordingClause}).{why}",
                    $"Leave the language out where the places of sale allow it, or give the act's own text in languages/{language.Code}/statements.yaml of a folder named with --data."
                );
            }
        }
    }

    private Assessment Assess(Subject declared, Edition edition, IReadOnlyList<Place> places, IReadOnlyList<Language> languages)
    {
        (MarketRoles roles, Maker onLabel) = rolesAt.GetOrAdd(
            string.Join(' ', places.Select(p => p.Code.Text)),
            _ => RolesOf(declared.Maker, places)
        );
        Subject subject = declared with { Maker = onLabel };
        Candle candle = subject.Candle;
        LawInForce law = laws.GetOrAdd(edition.Id, _ => edition.On(asOf));
        LawInForce lawForProduct = lawsForProducts.GetOrAdd(
            (edition.Id, subject.Kind.State, candle.OnMarketSince),
            key => law.ForState(key.State).ForStock(key.OnMarketSince)
        );
        Verdict verdict = subject.Judged.Under(lawForProduct);
        EMarkState? mark = EMarks.On(candle, subject.Batch, places, catalogue, lawbook.Safety);
        Parsed<string>? ufi = UfiMaker.Make(subject.Maker, candle, subject.Kind, verdict);
        return new Assessment
        {
            Candle = candle,
            Kind = subject.Kind,
            Batch = subject.Batch,
            Maker = subject.Maker,
            Roles = roles,
            Vessel = subject.Vessel,
            Places = places,
            Languages = languages,
            Verdict = verdict,
            Limits = subject.Limits,
            Contents = subject.Contents,
            FindingSources = new FindingSources([
                FindingSource.Stopping(() => KindFindings.Of(subject, verdict)),
                FindingSource.Stopping(() => RefusalFindings.Of(subject.Kind, verdict)),
                .. FindingList.Of(subject, verdict, oil => Contradictions(oil, law), languages),
                FindingSource.Stopping(() => roles.Findings),
                FindingSource.Stopping(() => AnswerFindings.Of(candle, places, lawbook.Safety, asOf)),
                FindingSource.Looking(() => AnswerFindings.Unanswered(candle, places, lawbook.Safety, asOf)),
                FindingSource.Looking(() => mark?.WhyNot is { } unmarked ? [unmarked] : []),
                FindingSource.Stopping(() => ufi?.Success == true ? Twins(candle, edition) : []),
                FindingSource.Looking(() => WrongUfis(subject.Recipe, edition)),
                FindingSource.Stopping(() => ufi?.Reason is { } why ? [new Finding(Gravity.Stop, why, edition.Ufi.Clause)] : []),
            ]),
            Ufi = ufi?.OrNull(),
            EMark = mark,
            NextChanges = new Lazy<(LegalChange?, LegalChange?)>(() => new ChangeFinder(verdict, subject.Vessel.Brimful).Next()),
            NextOfElements = new Lazy<LegalChange?>(() => new ChangeFinder(verdict, subject.Vessel.Brimful).NextOfElements()),
            Notification = new Lazy<SharedNotification>(() => kin.Of(subject, verdict, places)),
        };
    }

    // A folder has one maker, who has the same roles for every candle that is sold at the same places.
    private (MarketRoles Roles, Maker OnLabel) RolesOf(Maker maker, IReadOnlyList<Place> places)
    {
        MarketRoles roles = MarketRoles.Of(maker, places, lawbook.Safety, asOf);
        return (roles, roles.OnLabel(maker));
    }

    private static IEnumerable<Finding> WrongUfis(Recipe recipe, Edition edition) =>
        edition.PoisonCentres is { } rules
            ? MixturesInMixture
                .Of(recipe)
                .Where(m => m.WrongUfi is not null)
                .Select(m => new Finding(
                    Gravity.Look,
                    $"The UFI declared for {m.Name} cannot be told to the poison centres: {m.WrongUfi} Compare it with section 1.1 of its sheet.",
                    rules.Points[NotifiedPoint.MixtureInMixture]
                ))
            : [];

    private IEnumerable<Finding> Twins(Candle candle, Edition edition)
    {
        List<string> names = [.. twins.Of(candle).Take(MostNamed + 1)];
        if (names.Count > 0)
        {
            string others = string.Join(", ", names.Take(MostNamed)) + (names.Count > MostNamed ? ", ..." : "");
            yield return new Finding(
                Gravity.Stop,
                $"The same formulation number {candle.FormulationNumber}, and so the same UFI, but another composition: {others}. Give one of them a number that no composition has had.",
                edition.Ufi.Clause
            );
        }
    }

    // An oil says the same in every candle of a catalogue.
    private IReadOnlyList<string> Contradictions(Oil oil, LawInForce law) =>
        contradictions.GetOrAdd((oil, law.Edition.Id), _ => [.. OilComparison.Contradictions(oil, law)]);

    private Maker? TheMaker(Candle candle, Problems problems)
    {
        if (catalogue.WrongOfKind<Maker>() is { } wrong)
        {
            problems.AddCausedBy(wrong.File, candle.Place, $"{wrong.File} has problems, so the maker is not known.");
            return null;
        }

        List<Maker> makers = [.. catalogue.OfKind<Maker>()];
        if (makers.Count == 1)
        {
            return makers[0];
        }

        problems.Add(
            candle.Place,
            makers.Count == 0 ? "No maker is declared in this folder." : $"{makers.Count} makers are declared in this folder.",
            "Keep exactly one file with 'declares: maker': its name, address and telephone go on every label."
        );
        return null;
    }

    private List<Place> PlacesOf(Candle candle, string? onlyPlace, Problems problems)
    {
        var places = new List<Place>();
        IEnumerable<(string Code, TextPlace At)> codes = onlyPlace is null
            ? candle.SoldIn.Select(s => (s.Code.Text, s.Place))
            : [(onlyPlace, candle.Place)];
        foreach ((string code, TextPlace at) in codes)
        {
            if (lawbook.FindPlace(code) is { } place)
            {
                places.Add(place);
            }
            else
            {
                problems.Add(at, $"There is no edition of the law for the place '{code}'.", lawbook.InsteadOfPlace(code));
            }
        }

        if (places.Count == 0 && problems.None)
        {
            problems.Add(
                candle.Place,
                "The candle is sold nowhere.",
                "List country codes under 'soldIn', or name a place on the command line."
            );
        }

        return places;
    }

    private List<Language> LanguagesOf(Candle candle, List<Place> places, Edition edition, Problems problems)
    {
        List<Written<LanguageCode>> codes = [.. candle.Languages];
        foreach (Place place in places)
        {
            List<LanguageCode> lacking = [.. place.Languages.Where(l => codes.TrueForAll(c => c.Code != l))];
            List<LanguageCode> needed =
                !place.EitherOf ? lacking
                : lacking.Count < place.Languages.Count ? []
                : [place.Languages[0]];
            if (candle.Languages.Count > 0 && needed.Count > 0)
            {
                problems.Add(
                    candle.Languages[0].Place,
                    $"The label's languages ({string.Join(", ", candle.Languages.Select(l => l.Code))}) are not enough for {place.Name}: it needs {string.Join(", ", needed)} ({edition.Label.LanguagesClause}).",
                    "Add it to 'languages', or leave the field out to get what the places need."
                );
            }

            codes.AddRange(needed.Select(l => new Written<LanguageCode>(l, candle.Place)));
        }

        var languages = new List<Language>();
        foreach ((LanguageCode code, TextPlace at) in codes)
        {
            if (lawbook.FindLanguage(code.Text) is { } language)
            {
                languages.Add(edition.AsWritten(language));
            }
            else
            {
                string why = lawbook.WithoutTexts.GetValueOrDefault(code.Text) is { } because ? $": {because}" : "";
                problems.Add(
                    at,
                    $"There are no texts in the language '{code}'{why}.",
                    $"Languages so far: {string.Join(", ", lawbook.Languages.Codes)}. A label in another language would not be lawful there, so none is printed."
                );
            }
        }

        return languages;
    }

    internal static IEnumerable<string> NotDeclared(Recipe recipe) =>
        recipe
            .Oils.SelectMany(o => o.Oil.NotDeclared.Select(text => $"{o.Oil.Name}: {text}"))
            .Concat(
                recipe
                    .Oils.Where(o => o.Oil.IsKnownOnlyAsWhole)
                    .Select(o =>
                        $"{o.Oil.Name}: only the classes of the oil as a whole are known, not its ingredients. The result rests on this weaker evidence."
                    )
            );
}
