using System.Reflection;
using Chandlery.Core.Assessed;
using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Law.AnnexVi;
using Chandlery.Core.Law.Reading;
using Chandlery.Core.Quantities;
using Chandlery.Files;
using Chandlery.Paper.Papers;
using Chandlery.Yaml;

namespace Chandlery.Tests.Support;

/// <summary>What most tests need: the shipped law, and short ways to make mixtures and candles.</summary>
internal static class TestLaw
{
    /// <summary>A day on which the first label format and the classes of 2023/707 hold.</summary>
    public static readonly DateOnly Today = new(2026, 11, 25);

    private static readonly Lazy<Lawbook> SharedLawbook = new(() =>
    {
        var problems = new Problems();
        Lawbook? lawbook = LawReader.Read(ShippedFiles.Data(null, problems), PaperList.Own.Ids, problems);
        Assert.Empty(problems.Found);
        return lawbook!;
    });

    public static Lawbook Lawbook => SharedLawbook.Value;

    public static Edition Eu => Lawbook.Edition("eu-clp");

    public static string Repository { get; } =
        typeof(TestLaw).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == "RepositoryFolder").Value!;

    public static string DemoFolder => Path.Combine(Repository, "data", "demo");

    /// <summary>The example whose candle must not be sold.</summary>
    public static string StoppedFolder => Path.Combine(Repository, "data", "example-stopped");

    public static PaperShop Shop { get; } = ShippedShop.Open(ShippedFiles.Data(null, new Problems()), null, new Problems());

    /// <summary>An ingredient of a mixture for the law: its share in the finished candle and its classes.</summary>
    public static Ingredient Line(
        string name,
        double percent,
        string[] classes,
        string[]? limits = null,
        double? m = null,
        ToxicityEstimate[]? ate = null,
        string? cas = null
    )
    {
        List<HazardClaim> claims = [.. classes.Select(Claim)];
        List<SpecificLimit> specific =
        [
            .. (limits ?? []).Select(l => new SpecificLimit(
                Claim(l.Split(':')[0]).Category,
                new MassPercent(double.Parse(l.Split(':')[1], System.Globalization.CultureInfo.InvariantCulture)),
                null
            )),
        ];
        return new Ingredient
        {
            Identity = new SubstanceIdentity(name, cas is null ? null : CasNumber.Parse(cas).Value, null),
            Share = DeclaredRange.Exactly(percent),
            Claims = claims,
            SpecificLimits = specific,
            AcuteM = m,
            ChronicM = m,
            Toxicity = ate ?? [],
            Constituents = [],
            ListedSeparately = false,
            Place = new TextPlace("test", 1, 1),
        };
    }

    /// <summary>A mixture of these lines; the rest is a harmless filler.</summary>
    public static Composition Mixture(params Ingredient[] lines) => MixtureLeaving(0, lines);

    /// <summary>A mixture of these lines and a share that nobody declares; the rest is a harmless filler.</summary>
    public static Composition MixtureLeaving(double undeclaredPercent, params Ingredient[] lines)
    {
        double rest = 100 - undeclaredPercent - lines.Sum(l => l.Share.High.Value);
        Ingredient[] all = rest > 1e-9 ? [.. lines, Line("filler", rest, [])] : lines;
        var wax = new Wax
        {
            Id = "w",
            Place = new TextPlace("test", 1, 1),
            Name = "mixture",
            Supplier = "nobody",
            Ingredients = all,
            Blend = [],
            HighestLoad = null,
            SolidDensity = null,
            LiquidDensity = null,
        };
        var recipe = new Recipe(
            [],
            [new WaxShare(wax, MassPercent.Whole)],
            [],
            MassPercent.Zero,
            MassPercent.Zero,
            MassPercent.Zero,
            MassPercent.Zero
        );
        return Composer.Compose(recipe);
    }

    /// <summary>An edition that knows no substances beyond what the mixture declares, in force on a day.</summary>
    public static LawInForce Law(Edition? edition = null, DateOnly? day = null, DateOnly? onMarketSince = null) =>
        ((edition ?? Eu) with { Substances = SubstanceList.Empty }).On(day ?? Today, onMarketSince);

    public static Verdict Judge(params Ingredient[] lines) => Law().Judge(Mixture(lines));

    public static IReadOnlyList<Substance> Substances(Composition composition) => Law().Judge(composition).Substances;

    public static Classification Classify(params Ingredient[] lines) => Judge(lines).Classification;

    public static LabelElements Label(params Ingredient[] lines) => Judge(lines).Label;

    /// <summary>Codes of the classes, such as "Skin Irrit. 2", in the order of the rules.</summary>
    public static string Codes(params Ingredient[] lines) => string.Join(", ", Classify(lines).Classes.Select(c => c.Category.Code));

    public static HazardClaim Claim(string text) => Lawbook.Vocabulary.Parse(text).Value;

    /// <summary>An oil that declares these lines and nothing else.</summary>
    public static Oil Oil(string id, string name, params Ingredient[] lines) =>
        new()
        {
            Id = id,
            Place = new TextPlace("t", 1, 1),
            Name = name,
            Supplier = "S",
            Document = "D",
            Revised = Today,
            Ingredients = lines,
            OwnClaims = null,
            FlashPoint = null,
            Density = null,
            DropMass = null,
            HighestLoad = null,
            Ifra = null,
            NotDeclared = [],
        };

    /// <summary>A list with one entry of one substance, which always held.</summary>
    public static SubstanceList Listing(HarmonisedEntry entry, params KnownSubstance[] known) =>
        new(null, [new EntryHistory(entry.IndexNumber, [entry])], new Lazy<IReadOnlyList<KnownSubstance>>(known), [], []);

    /// <summary>An entry of the table for one substance that has no classes yet.</summary>
    public static HarmonisedEntry Listed(string cas, params string[] names) =>
        new()
        {
            IndexNumber = "",
            Members = [new EntryMember(names, cas, null)],
            Classes = [],
            Limits = [],
            AcuteM = null,
            ChronicM = null,
            Toxicity = [],
            Figures = [],
            Unread = [],
            Notes = [],
            Act = new LegalAct("", "an act", "", 0),
            From = DateOnly.MinValue,
        };

    /// <summary>Assessments of a demo candle or batch.</summary>
    public static Assessment Demo(string file, string? place = null, DateOnly? asOf = null) =>
        Assessed(Path.Combine(DemoFolder, file), place, asOf);

    /// <summary>Assessment of a demo candle whose declaration was changed.</summary>
    public static Assessment DemoEdited(string file, string place, Func<string, string> edit)
    {
        using var folder = new MakersFolder();
        return folder.Write(file, edit(folder.Read(file))).Assess(Path.GetFileNameWithoutExtension(file), place);
    }

    /// <summary>The wax of a demo candle.</summary>
    public static Wax WaxOf(Assessment a) =>
        DeclarationFolder.Open(DemoFolder, Lawbook.Vocabulary).Catalogue.Find<Wax>(a.Candle.Wax, new Problems())!;

    /// <summary>The assessment of the candle that must not be sold.</summary>
    public static Assessment Stopped() => Assessed(Path.Combine(StoppedFolder, "candles", "storm-jar.yaml"));

    private static Assessment Assessed(string file, string? place = null, DateOnly? asOf = null)
    {
        DeclarationFolder folder = DeclarationFolder.Open(file, Lawbook.Vocabulary);
        Assert.Empty(folder.Problems.Found);
        var problems = new Problems();
        IReadOnlyList<Assessment> assessments = new Assessor(Lawbook, folder.Catalogue, asOf ?? Today).Assess(
            folder.Asked[0],
            place,
            problems
        );
        Assert.Empty(problems.Found);
        return assessments[0];
    }

    /// <summary>What making a paper of a demo candle comes to, in the first language.</summary>
    public static PaperOutcome Make(PaperKind paper, Assessment a, PaperShop? shop = null)
    {
        DeclarationFolder folder = DeclarationFolder.Open(DemoFolder, Lawbook.Vocabulary);
        Wax wax = folder.Catalogue.Find<Wax>(a.Candle.Wax, new Problems())!;
        return paper.Make(
            new PaperRequest(a, a.Languages[0], wax, Lawbook, shop ?? Shop, new PaperSettings()) { Catalogue = folder.Catalogue }
        );
    }

    /// <summary>A paper of the program's list that can be made.</summary>
    public static MadePaper Made(string paper, Assessment a)
    {
        PaperOutcome outcome = Make(PaperList.Own.Find(paper)!, a);
        return outcome as MadePaper ?? throw new InvalidOperationException($"{outcome}");
    }

    /// <summary>Reads declarations from texts by file name; the ones that are wrong are noted.</summary>
    public static Catalogue Read(Problems problems, params (string File, string Text)[] files)
    {
        var reader = new DeclarationReader(Lawbook.Vocabulary);
        List<IDeclaration> declarations =
        [
            .. files.Select(f => reader.Read(f.Text, f.File, Path.GetFileNameWithoutExtension(f.File), problems)).OfType<IDeclaration>(),
        ];
        return new Catalogue(declarations, problems);
    }
}
