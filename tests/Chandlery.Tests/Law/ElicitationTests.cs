using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Classified;
using Chandlery.Core.Labelled;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

public class ElicitationTests
{
    [Outside("CLP Annex I, Table 3.4.6 (elicitation figures in Annex II, 2.10, consolidated text of 1 September 2025)")]
    [Theory]
    [InlineData("Skin Sens. 1B, H317", 0.0999, false)]
    [InlineData("Skin Sens. 1B, H317", 0.1, true)]
    [InlineData("Skin Sens. 1, H317", 0.1, true)]
    [InlineData("Skin Sens. 1A, H317", 0.00999, false)]
    [InlineData("Skin Sens. 1A, H317", 0.01, true)]
    [InlineData("Resp. Sens. 1B, H334", 0.1, true)]
    public void NamedFromTheElicitationLimit(string hazard, double percent, bool named)
    {
        Classification c = Bench.Classify(Bench.Line("a", percent, [hazard]));
        Assert.Equal(named ? "EUH208" : null, c.Supplemental);
        Assert.Equal(named, c.Sensitisers.Count == 1);
    }

    [Outside("CLP Annex I, Table 3.4.6 as amended by Regulation (EU) 2019/521 (12th ATP): one tenth of the specific limit")]
    [Theory]
    [InlineData(0.000999, false)]
    [InlineData(0.001, true)]
    public void OneTenthOfASpecificLimit(double percent, bool named)
    {
        Classification c = Bench.Classify(Bench.Line("a", percent, ["Skin Sens. 1A, H317"], ["Skin Sens. 1A, H317:0.01"]));
        Assert.Equal(named, c.Supplemental == "EUH208");
    }

    [Outside("CLP Annex II, 2.8: no EUH208 on a sensitising mixture, but its other sensitisers are named")]
    [Fact]
    public void ASensitisingCandleNamesItsOtherSensitisersWithoutEuh208()
    {
        Classification c = Bench.Classify(
            Bench.Line("strong", 2, ["Skin Sens. 1B, H317"]),
            Bench.Line("weak", 0.2, ["Skin Sens. 1B, H317"])
        );
        LabelElements label = LabelSelector.Select(Bench.Eu, c);
        Assert.Empty(label.Supplemental);
        Assert.Equal(["strong", "weak"], label.Named.Select(n => n.Name));
    }
}
