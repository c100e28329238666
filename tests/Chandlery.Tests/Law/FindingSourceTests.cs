using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law;

/// <summary>Whether anything stops the sale is asked of fewer sources than all findings: both say the same.</summary>
public sealed class FindingSourceTests
{
    [Theory]
    [InlineData("data/demo")]
    [InlineData("data/example-stopped")]
    public void What_stops_the_sale_is_found_where_it_may_and_nowhere_else(string folder)
    {
        Catalogue catalogue = DeclarationFolder.Open(Path.Combine(TestLaw.Repository, folder), TestLaw.Lawbook.Vocabulary).Catalogue;
        var assessor = new Assessor(TestLaw.Lawbook, catalogue, TestLaw.Today);
        foreach (string place in TestLaw.Lawbook.Places.DistinctBy(p => p.EditionId).Select(p => p.Code.Text))
        {
            foreach (Assessment a in catalogue.OfKind<Candle>().SelectMany(c => assessor.Assess(c, place, new Problems())))
            {
                Assert.Equal(a.Findings.Any(f => f.Gravity == Gravity.Stop), a.StopsSale);
                Assert.All(
                    a.FindingSources.Sources.Where(s => !s.MayStop).SelectMany(s => s.Find()),
                    f => Assert.Equal(Gravity.Look, f.Gravity)
                );
            }
        }
    }
}
