using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Files;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Papers;
using Chandlery.Yaml;

namespace Chandlery.Benchmarks;

/// <summary>Law, templates and one assessed candle: what most benchmarks start from.</summary>
internal sealed record Desk(IReadOnlyDictionary<string, string> Data, Lawbook Lawbook, PaperShop Shop, Assessment Assessment)
{
    /// <summary>Lays a candle's file on the desk.</summary>
    public static Desk Lay(string candle)
    {
        Face.LoadAhead();
        var problems = new Problems();
        IReadOnlyDictionary<string, string> data = ShippedFiles.Data(null, problems);
        Lawbook lawbook = ShippedLaw.Open(data, null, problems)!;
        PaperShop shop = ShippedShop.Open(data, null, problems);
        DeclarationFolder folder = DeclarationFolder.Open(candle, lawbook.Vocabulary);
        Assessment assessment = new Assessor(lawbook, folder.Catalogue, new DateOnly(2026, 11, 25)).Assess(folder.Asked[0], null, problems)[
            0
        ];
        return problems.None
            ? new Desk(data, lawbook, shop, assessment)
            : throw new InvalidOperationException(string.Join('\n', problems.Found));
    }
}
