using Chandlery.Tests.Support;

namespace Chandlery.Tests.SecondCalculation;

/// <summary>What the second calculation makes of a mixture under other laws than the Union's, on both sides of each limit that differs.</summary>
public sealed class EditionExampleTests
{
    [Theory]
    [InlineData("0.1 | Skin Sens. 1, H317", "Skin Sens. 1")]
    [InlineData("0.099 | Skin Sens. 1, H317", "")]
    [InlineData("0.99 | Skin Sens. 1B, H317", "")]
    [InlineData("0.1 | Carc. 2, H351", "Carc. 2")]
    [InlineData("0.099 | Carc. 2, H351", "")]
    [InlineData("0.1 | Repr. 2, H361 + 0.099 | Lact., H362", "Repr. 2")]
    [InlineData("0.99 | Muta. 2, H341", "")]
    [InlineData("1 | STOT RE 1, H372 + 0.99 | STOT SE 2, H371", "STOT RE 1")]
    [InlineData("1 | STOT SE 2, H371 + 0.99 | STOT RE 1, H372", "STOT SE 2")]
    [InlineData("9 | Eye Irrit. 2B, H320 + 1 | Eye Irrit. 2A, H319", "Eye Irrit. 2A")]
    [InlineData("1 | STOT SE 1, H370 | STOT SE 1, H370: 5", "STOT SE 2")]
    [InlineData("100 | oral 2001", "")]
    [InlineData("5 | dermal 55.606 + 46.96 | Acute Tox. 5, H313", "Acute Tox. 4 (dermal)")]
    [InlineData("90 | Aquatic Chronic 1, H410 + 0.2 | PBT, EUH440", "")]
    [InlineData("liquid | flash 50 ISO 3679 | burns no", "Flam. Liq. 3")]
    [InlineData("liquid | flash 60.1 ISO 3679", "Flam. Liq. 4")]
    [InlineData("liquid | flash 93 ISO 3679", "Flam. Liq. 4")]
    [InlineData("liquid | flash 93.1 ISO 3679", "")]
    [Outside("29 CFR 1910.1200, Appendices A.1 to A.9 and B.6, as of 2024 (from memory)")]
    public void United_States(string mixture, string classes) => Gives(SecondEdition.UnitedStates, mixture, classes);

    [Theory]
    [InlineData("100 | oral 5000", "Acute Tox. 5 (oral)")]
    [InlineData("100 | oral 5001", "")]
    [InlineData("50 | Acute Tox. 5, H313", "Acute Tox. 5 (dermal)")]
    [InlineData("49 | Acute Tox. 5, H313", "")]
    [InlineData("1 | Skin Irrit. 2, H315", "Skin Irrit. 3")]
    [InlineData("0.99 | Skin Irrit. 2, H315", "")]
    [InlineData("0.1 | Skin Corr. 1B, H314", "Skin Irrit. 3")]
    [InlineData("0.099 | Skin Corr. 1B, H314", "")]
    [InlineData("10 | Skin Irrit. 3, H316", "Skin Irrit. 3")]
    [InlineData("9.99 | Skin Irrit. 3, H316", "")]
    [InlineData("10 | Skin Irrit. 2, H315", "Skin Irrit. 2")]
    [InlineData("2.5 | Aquatic Acute 1, H400", "Aquatic Acute 2")]
    [InlineData("0.25 | Aquatic Acute 1, H400", "Aquatic Acute 3")]
    [InlineData("0.249 | Aquatic Acute 1, H400", "")]
    [InlineData("25 | Aquatic Acute 2, H401", "Aquatic Acute 2")]
    [InlineData("2.4 | Aquatic Acute 2, H401 + 1 | Aquatic Acute 3, H402", "Aquatic Acute 3")]
    [Outside("UN GHS revision 10, Tables 3.1.1, 3.2.3 and 4.1.1 (from memory)")]
    public void All_building_blocks(string mixture, string classes) => Gives(SecondEdition.Ghs, mixture, classes);

    [Theory]
    [InlineData("25 | Aquatic Acute 2, H401 | Aquatic Chronic 2, H411", "GHS09", "", "H401 H411")]
    [InlineData("25 | Aquatic Acute 1, H400 | Aquatic Chronic 1, H410", "GHS09", "Warning", "H410")]
    [InlineData("0.1 | Resp. Sens. 1, H334 + 10 | Eye Irrit. 2A, H319", "GHS08", "Danger", "H319 H334")]
    [InlineData("100 | oral 5000", "", "Warning", "H303")]
    [InlineData("0.01 | Skin Sens. 1A, H317", "", "", "GHS-ELICITATION")]
    [Outside("UN GHS revision 10, 1.4.10.5.3, 3.1.4, 3.4.4.2 and 4.1.4 (from memory)")]
    public void Label_of_all_building_blocks(string mixture, string pictograms, string word, string statements)
    {
        SecondLabel label = SecondClassifier.Answer(MixtureText.Read(mixture), SecondEdition.Ghs).Label;
        Assert.Equal(
            (pictograms, word, statements),
            (string.Join(" ", label.Pictograms), label.SignalWord, string.Join(" ", label.Statements))
        );
    }

    [Theory]
    [InlineData("1 | PBT, EUH440 + 1 | ED HH 1, EUH380 + 1 | Skin Sens. 1, H317", "Skin Sens. 1")]
    [InlineData("0.99 | Skin Sens. 1, H317", "")]
    [Outside("Regulation (EC) No 1272/2008 as retained in Great Britain, without Delegated Regulation (EU) 2023/707 (from memory)")]
    public void Great_Britain(string mixture, string classes) => Gives(SecondEdition.GreatBritain, mixture, classes);

    private static void Gives(SecondEdition edition, string mixture, string classes) =>
        Assert.Equal(classes, string.Join(", ", SecondClassifier.Answer(MixtureText.Read(mixture), edition).Classes));
}
