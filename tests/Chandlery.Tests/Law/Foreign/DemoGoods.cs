using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Foreign;

/// <summary>The demo's goods as somebody would sell them anywhere: each place has its importer.</summary>
internal static class DemoGoods
{
    private const string SwissImporter =
        "  - { name: Seewind Handel, address: [1 Uferweg, Kleinstein], country: CH, telephone: +999 40 555 021, email: post@seewind.example }\n";

    private static readonly Lazy<Catalogue> Read = new(() =>
    {
        using var folder = new MakersFolder();
        return folder.Change("maker.yaml", "importers:\n", "importers:\n" + SwissImporter).Catalogue;
    });

    public static Catalogue Catalogue => Read.Value;

    /// <summary>
    /// Three container candles, since one is classified, one names sensitisers and one is neither; and one product of every other
    /// kind, as its batch where there is one, so that what is said of batches is read too.
    /// </summary>
    public static IReadOnlyList<string> Ids { get; } =
    ["fig-tin", "harbour-bowl", "slate-jar", .. TestLaw.Lawbook.Kinds.Codes.Where(kind => kind != ProductKind.Usual).Select(OfKind)];

    private static string OfKind(string kind)
    {
        Candle product = Catalogue.OfKind<Candle>().First(c => c.Kind?.Id == kind);
        return Catalogue.OfKind<Batch>().FirstOrDefault(b => b.Candle.Id == product.Id)?.Id ?? product.Id;
    }

    /// <summary>A product at a place; what is wrong where it cannot be assessed there.</summary>
    public static (Assessment? Assessment, IReadOnlyList<Problem> Problems) At(string id, Place place)
    {
        var problems = new Problems();
        Assessment? a = new Assessor(TestLaw.Lawbook, Catalogue, TestLaw.Today)
            .Assess(Catalogue.All.First(d => d.Id == id && d is Candle or Batch), place.Code, problems)
            .SingleOrDefault();
        return (a, [.. problems.Found]);
    }
}
