using Chandlery.Core.Law;
using Chandlery.Core.Law.AnnexVi;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.Law.Reading;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Readers;

/// <summary>Every field of every record that the invented law is read into: <c>Law/Readers/Records</c>, to be read beside its files.</summary>
public sealed class ReadRecordTests
{
    private static readonly string Folder = Path.Combine(InventedLaw.Folder, "Records");

    private static readonly Lawbook Lawbook = InventedLaw.Read();
    private static readonly ProductSafetyLaw Safety = Lawbook.Safety;

    private static readonly Dictionary<string, Func<object>> Records = new()
    {
        ["hazards"] = () => new { Categories = Lawbook.Vocabulary.Categories.Select(Plainly) },
        ["mainland"] = () => Lawbook.Edition("mainland"),
        ["island"] = () => Lawbook.Edition("island"),
        ["places"] = () => new { Lawbook.Places, Lawbook.WithoutTexts },
        ["burning"] = () => Lawbook.Burning,
        ["jar"] = () => Lawbook.Kinds.Find("jar")!,
        ["stub"] = () => Lawbook.Kinds.Find("stub")!,
        ["english"] = () => Lawbook.FindLanguage("en")!,
        ["esperanto"] = () => Lawbook.FindLanguage("eo")!,
        ["sheet"] = () => Lawbook.SheetSentences,
        ["sheet-words"] = () => Lawbook.SheetWords.Find("eo")!,
        ["product-safety"] = () =>
            new
            {
                Safety.ByPlace,
                Markets = Safety.Markets.ToList(),
                Listings = Safety.Listings.ToList(),
                Recalls = Safety.Recalls.ToList(),
                Incidents = Safety.Incidents.ToList(),
                Quantities = Safety.Quantities.ToList(),
                Packagings = Safety.Packagings.ToList(),
                Duties = Safety.Duties.ToList(),
                Words = Safety.Words.ToList(),
                AuthorityWords = Safety.AuthorityWords.ToList(),
                ProcedureWords = Safety.ProcedureWords.ToList(),
            },
        ["technical-file"] = () => Safety.File.Value,
        ["substances"] = () =>
            new
            {
                Lawbook.Substances.Known,
                Lawbook.Substances.Table!.Rules,
                Entries = Lawbook.Substances.Table!.All().ToList(),
            },
        ["substance-list"] = () =>
        {
            (IReadOnlyList<EntryHistory> more, IReadOnlyList<ExpectedClasses> expected, IReadOnlyList<string> extracts) =
                new SubstanceReader(Lawbook.Vocabulary).Read(new Fields(InventedLaw.Tree("substances/list.yaml"), new Problems()));
            return new
            {
                More = more,
                Expected = expected,
                Extracts = extracts,
            };
        },
    };

    public static TheoryData<string> Names() => [.. Records.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_record_holds_what_its_file_says(string name) => ApprovedPlace.Of(Folder, name).Holds(RecordText.Of(Records[name]()));

    [Fact]
    public void Every_approved_record_is_one_of_these() =>
        Assert.Equal(Records.Keys.Order(StringComparer.Ordinal), ApprovedPlace.Names(Folder).Order(StringComparer.Ordinal));

    // Elsewhere a category is told by its code alone.
    private static object Plainly(Core.Hazards.HazardCategory c) =>
        new
        {
            c.Code,
            c.Index,
            c.ClassCode,
            c.Category,
            c.Variant,
            c.Statement,
            c.Group,
            c.Severity,
            c.Plain,
            c.MultipliedBy,
            c.NamesOrgans,
            c.Area,
        };
}
