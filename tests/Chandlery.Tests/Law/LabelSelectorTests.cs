using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Labelled;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

public class LabelSelectorTests
{
    private static LabelElements Label(params (double Percent, string Hazard)[] lines)
    {
        int i = 0;
        return LabelSelector.Select(Bench.Eu, Bench.Classify([.. lines.Select(l => Bench.Line("s" + i++, l.Percent, [l.Hazard], m: 1))]));
    }

    private static string Pictograms(LabelElements label) => string.Join(" ", label.Pictograms.Select(p => p.Code));

    private static string Hazards(LabelElements label) => string.Join(" ", label.Hazard.Select(p => p.Code));

    [Outside("CLP Annex I, Tables 3.2.5, 3.3.5, 3.4.7 and 4.1.4 (label elements)")]
    [Theory]
    [InlineData("Skin Irrit. 2, H315", 20, "GHS07", "Warning", "H315")]
    [InlineData("Eye Irrit. 2, H319", 20, "GHS07", "Warning", "H319")]
    [InlineData("Eye Dam. 1, H318", 20, "GHS05", "Danger", "H318")]
    [InlineData("Skin Sens. 1B, H317", 20, "GHS07", "Warning", "H317")]
    [InlineData("Aquatic Acute 1, H400", 30, "GHS09", "Warning", "H400")]
    [InlineData("Aquatic Chronic 2, H411", 30, "GHS09", null, "H411")]
    [InlineData("Aquatic Chronic 3, H412", 30, "", null, "H412")]
    [InlineData("Aquatic Chronic 4, H413", 30, "", null, "H413")]
    public void EachClassHasItsElements(string hazard, double percent, string pictograms, string? word, string statements)
    {
        LabelElements label = Label((percent, hazard));
        Assert.Equal(pictograms, Pictograms(label));
        Assert.Equal(word, label.SignalWord?.Code);
        Assert.Equal(statements, Hazards(label));
    }

    [Outside("CLP Art. 26(1)(c): GHS05 displaces GHS07 for skin or eye irritation only")]
    [Fact]
    public void CorrosionDisplacesTheExclamationMarkForIrritationButNotForSensitisation()
    {
        Assert.Equal("GHS05", Pictograms(Label((5, "Eye Dam. 1, H318"), (20, "Skin Irrit. 2, H315"))));
        Assert.Equal("GHS05 GHS07", Pictograms(Label((5, "Eye Dam. 1, H318"), (20, "Skin Irrit. 2, H315"), (2, "Skin Sens. 1B, H317"))));
    }

    [Outside("CLP Art. 26(1)(d): GHS08 for respiratory sensitisation displaces GHS07 for skin sensitisation and irritation")]
    [Fact]
    public void RespiratorySensitisationDisplacesTheExclamationMark()
    {
        Assert.Equal("GHS08", Pictograms(Label((2, "Resp. Sens. 1B, H334"), (2, "Skin Sens. 1B, H317"), (20, "Skin Irrit. 2, H315"))));

        // GHS08 for another reason does not.
        Assert.Equal("GHS07 GHS08", Pictograms(Label((2, "Carc. 2, H351"), (2, "Skin Sens. 1B, H317"))));
    }

    [Outside("CLP Art. 20: Danger displaces Warning (from memory)")]
    [Fact]
    public void DangerDisplacesWarning() =>
        Assert.Equal("Danger", Label((5, "Eye Dam. 1, H318"), (2, "Skin Sens. 1B, H317")).SignalWord?.Code);

    [Outside("CLP Annex III, Part 1: H410 lets H400 go (official-body FAQ)")]
    [Fact]
    public void H410StandsForH400() =>
        Assert.Equal("H410", Hazards(Label((15, "Aquatic Acute 1, H400"), (26, "Aquatic Chronic 1, H410"), (12, "Aquatic Acute 1, H400"))));

    [Outside("CLP Annex III, Part 1: H314 lets H318 go (from memory)")]
    [Fact]
    public void H314StandsForH318()
    {
        LabelElements label = Label((6, "Skin Corr. 1B, H314"));
        Assert.Equal("H314", Hazards(label));
        Assert.Contains(label.LeftOff, l => l.Code == "H318");
    }

    [Outside("CLP Annex VI, entry of d-limonene: Aquatic Acute 1 with Chronic 3 is labelled H410 (from memory)")]
    [Fact]
    public void AcuteOneWithChronicThreeIsLabelledH410() =>
        Assert.Equal("H410", Hazards(Label((26, "Aquatic Acute 1, H400"), (26, "Aquatic Chronic 3, H412"))));

    [Outside("CLP Art. 18(3)(b): irritants and aquatic classes are not named")]
    [Fact]
    public void OnlyTheListedClassesNameTheirSubstances()
    {
        Assert.Empty(Label((20, "Skin Irrit. 2, H315"), (30, "Aquatic Chronic 2, H411")).Named);
        Assert.Equal("s0", Label((4, "Eye Dam. 1, H318")).Named.Single().Name);
    }

    [Outside("CLP Art. 28(2) and (3): disposal for the public, normally no more than six statements")]
    [Theory]
    [InlineData("Skin Sens. 1B, H317", 2)]
    [InlineData("Aquatic Chronic 3, H412", 30)]
    [InlineData("Repr. 2, H361d", 4)]
    public void AtMostSixPrecautionsAndDisposalAmongThem(string hazard, double percent)
    {
        LabelElements label = Label((percent, hazard));
        Assert.InRange(label.Precautionary.Count, 1, 6);
        Assert.Contains(label.Precautionary, p => p.Code == "P501");
        Assert.All(label.Precautionary, p => Assert.NotEmpty(p.Because));
    }

    [Outside("CLP Annex I, Table 3.4.7: the statements offered for skin sensitisers")]
    [Fact]
    public void PrecautionsOfASkinSensitiserAreThoseTheLawOffers()
    {
        string[] offered = ["P261", "P272", "P280", "P302+P352", "P333+P313", "P321", "P362+P364", "P501", "P101", "P102", "P103"];
        Assert.All(Label((2, "Skin Sens. 1B, H317")).Precautionary, p => Assert.Contains(p.Code, offered));
    }
}
