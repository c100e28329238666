using BenchmarkDotNet.Attributes;
using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Core.Quantities;
using Chandlery.Files;
using Chandlery.Paper.Papers;
using Chandlery.Yaml;

namespace Chandlery.Benchmarks;

/// <summary>Classification of a candle with 80 ingredients under the European Union's law; goal: under 20 microseconds, warm.</summary>
[MemoryDiagnoser]
public class ClassificationBenchmark
{
    private const int Count = 80;

    private static readonly string[][] Kinds =
    [
        ["Skin Sens. 1B, H317"],
        ["Skin Irrit. 2, H315", "Eye Irrit. 2, H319", "Skin Sens. 1B, H317", "Aquatic Chronic 3, H412"],
        ["Aquatic Acute 1, H400", "Aquatic Chronic 1, H410"],
        ["Acute Tox. 4, H302", "Eye Dam. 1, H318"],
        ["Flam. Liq. 3, H226", "Asp. Tox. 1, H304", "Skin Irrit. 2, H315", "Skin Sens. 1, H317", "Aquatic Chronic 2, H411"],
        [],
    ];

    private Edition edition = null!;
    private IReadOnlyList<Substance> substances = null!;
    private Composition composition = null!;
    private LawInForce law = null!;
    private Recipe recipe = null!;
    private readonly DateOnly day = new(2026, 11, 25);

    [GlobalSetup]
    public void Setup()
    {
        var problems = new Problems();
        Lawbook lawbook = LawReader.Read(ShippedFiles.Data(null, problems), PaperList.Own.Ids, problems)!;
        edition = lawbook.Edition("eu-clp");
        var place = new TextPlace("bench", 1, 1);
        List<Ingredient> lines = [];
        for (int i = 0; i < Count; i++)
        {
            List<HazardClaim> claims = [.. Kinds[i % Kinds.Length].Select(k => lawbook.Vocabulary.Parse(k).Value)];
            lines.Add(
                new Ingredient
                {
                    Identity = new SubstanceIdentity("substance " + i, null, null),
                    Share = DeclaredRange.Exactly(100.0 / Count),
                    Claims = claims,
                    SpecificLimits = [],
                    AcuteM = 1,
                    ChronicM = 1,
                    Toxicity = [],
                    Constituents = [],
                    ListedSeparately = false,
                    Place = place,
                }
            );
        }

        Oil Part(int from) =>
            new Oil
            {
                Id = "oil" + from,
                Place = place,
                Name = "oil" + from,
                Supplier = "s",
                Document = "d",
                Revised = day,
                Ingredients = [.. lines.Skip(from).Take(60)],
                OwnClaims = null,
                FlashPoint = null,
                Density = null,
                DropMass = null,
                HighestLoad = null,
                Ifra = null,
                NotDeclared = [],
            };
        recipe = new Recipe(
            [.. new[] { 0, 10, 20 }.Select(f => new OilShare(Part(f), new MassPercent(3), new MassPercent(100.0 / 3)))],
            [],
            [],
            new MassPercent(9),
            new MassPercent(9),
            new MassPercent(9),
            MassPercent.Zero
        );
        composition = Composer.Compose(recipe);
        law = edition.On(day);
        substances = law.Judge(composition).Substances;
        if (substances.Count != Count)
        {
            throw new InvalidOperationException($"{substances.Count} substances instead of {Count}");
        }
    }

    [Benchmark]
    public Classification Classify80Ingredients() =>
        Classifier.Classify(law.Rules, new MixtureIndex(substances, edition.HighestCategory), composition);

    [Benchmark]
    public Composition Compose3OilsOf60Ingredients() => Composer.Compose(recipe);

    [Benchmark]
    public LabelElements SelectLabel() =>
        LabelSelector.Select(edition, Classify80Ingredients(), new PrecautionChoices(edition.Precautions));

    [Benchmark]
    public Verdict Judge80Ingredients() => law.Judge(composition);
}
