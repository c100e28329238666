using Chandlery.Tests.Support;

namespace Chandlery.Tests.SecondCalculation;

/// <summary>What the second calculation makes of liquids, against examples worked by hand from the clauses, on both sides of each limit.</summary>
public sealed class LiquidExampleTests
{
    private const string Asp10 = "10 | Asp. Tox. 1, H304 + ";

    [Theory]
    [InlineData("liquid | flash 22.9 EN ISO 3679 | boiling 35", "Flam. Liq. 1")]
    [InlineData("liquid | flash 22.9 EN ISO 3679 | boiling 35.1", "Flam. Liq. 2")]
    [InlineData("liquid | flash 23 EN ISO 3679", "Flam. Liq. 3")]
    [InlineData("liquid | flash 60 EN ISO 3679", "Flam. Liq. 3")]
    [InlineData("liquid | flash 60.1 EN ISO 3679", "")]
    [InlineData("liquid | flash 35 EN ISO 3679 | burns no", "Flam. Liq. 3")]
    [InlineData("liquid | flash 35.1 EN ISO 3679 | burns no", "")]
    [InlineData("liquid | flash 35.1 EN ISO 3679 | burns yes", "Flam. Liq. 3")]
    [InlineData("liquid | flash above 35 EN ISO 3679 | burns no", "")]
    [InlineData("liquid | class Flam. Liq. 2, H225", "Flam. Liq. 2")]
    [InlineData("liquid | class not classified", "")]
    [Outside("CLP Annex I, 2.6.1, Table 2.6.1 and 2.6.4.5, consolidated text of 1 May 2026")]
    public void Flash_and_boiling_point_decide(string mixture, string classes)
    {
        SecondAnswer answer = Answer(mixture);
        Assert.Equal((classes, false), (string.Join(", ", answer.Classes), answer.FlammabilityUnknown));
    }

    [Theory]
    [InlineData("liquid")]
    [InlineData("liquid | flash 22.9 EN ISO 3679")]
    [InlineData("liquid | flash above 59.9 EN ISO 3679")]
    [InlineData("liquid | flash above 34.9 EN ISO 3679 | burns no")]
    [InlineData("liquid | flash 70 EN ISO 2592")]
    [InlineData("liquid | flash 22.9 EN ISO 3679 | class not classified")]
    [InlineData("40 | Flam. Liq. 2, H225 + liquid | boiling 78")]
    [Outside("CLP Annex I, 2.6.4.1 and Table 2.6.3: data or a test, never shares")]
    public void What_was_not_measured_is_unknown(string mixture) => Assert.True(Answer(mixture).FlammabilityUnknown);

    [Theory]
    [InlineData(Asp10 + "liquid | viscosity 20.5", "Asp. Tox. 1")]
    [InlineData(Asp10 + "liquid | viscosity 20.51", "")]
    [InlineData(Asp10 + "liquid", "Asp. Tox. 1")]
    [InlineData("9 | Asp. Tox. 1, H304 + 1 | Asp. Tox. 1, H304 + liquid | viscosity 4", "Asp. Tox. 1")]
    [InlineData("9.1 | Asp. Tox. 1, H304 + 0.99 | Asp. Tox. 1, H304 + liquid | viscosity 4", "")]
    [InlineData("90 | Asp. Tox. 1, H304", "")]
    [Outside("CLP Annex I, 3.10.3.3.1.1 and 3.10.3.3.1.2, consolidated text of 1 May 2026")]
    public void Aspiration_takes_share_and_thinness(string mixture, string classes) =>
        Assert.Equal(classes, string.Join(", ", Answer(mixture).Classes));

    [Theory]
    [InlineData("1 | Skin Sens. 1B, H317 + liquid | flash 70 EN ISO 3679 | vapour yes", "EUH018 H317")]
    [InlineData("1 | Skin Sens. 1B, H317 + liquid | flash 70 EN ISO 3679 | vapour no", "H317")]
    [InlineData("1 | Skin Sens. 1B, H317 + 9 | Flam. Liq. 2, H225 + liquid | flash 70 EN ISO 3679", "EUH018 H317")]
    [InlineData("1 | Skin Sens. 1B, H317 + liquid | flash 60 EN ISO 3679 | vapour yes", "H226 H317")]
    [InlineData("0.9 | Skin Sens. 1B, H317 + liquid | flash 70 EN ISO 3679 | vapour yes", "EUH208")]
    [Outside("CLP Art. 25(1), Annex II 1.1: on what is classified, but not as flammable")]
    public void Flammable_vapour_is_told(string mixture, string statements) =>
        Assert.Equal(statements, string.Join(" ", Answer(mixture).Label.Statements));

    [Theory]
    [InlineData("liquid | flash 20 EN ISO 3679 | boiling 78", "GHS02", "Danger", "H225")]
    [InlineData("liquid | flash 50 EN ISO 3679", "GHS02", "Warning", "H226")]
    [InlineData(Asp10 + "liquid | flash 50 EN ISO 3679", "GHS02 GHS08", "Danger", "H226 H304")]
    [Outside("CLP Annex I, Tables 2.6.2 and 3.10.2; pictograms of Annex V from memory")]
    public void Label(string mixture, string pictograms, string word, string statements)
    {
        SecondLabel label = Answer(mixture).Label;
        Assert.Equal(
            (pictograms, word, statements),
            (string.Join(" ", label.Pictograms), label.SignalWord, string.Join(" ", label.Statements))
        );
    }

    [Fact]
    [Outside("CLP Art. 18(3)(b): aspiration hazard asks for names")]
    public void The_chief_cause_of_aspiration_is_named() =>
        Assert.Equal(["s2"], Answer("4 | Asp. Tox. 1, H304 + 9 | Asp. Tox. 1, H304 + liquid").Names.Chiefs["Asp. Tox. 1"]);

    private static SecondAnswer Answer(string mixture) => SecondClassifier.Answer(MixtureText.Read(mixture), SecondEdition.Union);
}
