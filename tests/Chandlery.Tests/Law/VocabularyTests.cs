using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Classified;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>Hazard classes as sheets print them, kinds told from names, and what is said when something is open.</summary>
public sealed class VocabularyTests
{
    [Theory]
    [InlineData("Skin Sens. 1B, H317", "Skin Sens. 1B", "H317")]
    [InlineData("Acute Tox. 4 * - H302", "Acute Tox. 4 (oral)", "H302")]
    [InlineData("Aquatic Chronic 2", "Aquatic Chronic 2", "H411")]
    [InlineData("Repr. 2, H361d", "Repr. 2", "H361d")]
    [InlineData("Repr. 1B H360FD", "Repr. 1B", "H360FD")]
    public void A_class_is_read_as_printed(string text, string code, string statement)
    {
        HazardClaim claim = TestLaw.Lawbook.Vocabulary.Parse(text).Value;
        Assert.Equal((code, statement), (claim.Category.Code, claim.Statement.Text));
    }

    [Theory]
    [InlineData(
        "Skin Sence. 1B",
        "'Skin Sence. 1B' names no hazard class that is known here. Did you mean 'Skin Sens. 1B'? Write the class as sheets abbreviate it, such as 'Skin Sens. 1B, H317'."
    )]
    [InlineData(
        " dangerous to hedgehogs ",
        "'dangerous to hedgehogs' names no hazard class that is known here. Write the class as sheets abbreviate it, such as 'Skin Sens. 1B, H317'."
    )]
    [InlineData(
        "Acute Tox. 4",
        "'Acute Tox. 4' leaves open which of H302 (oral), H312 (dermal), H332 (inhalation) is meant: add the statement."
    )]
    [InlineData(
        "Acute Tox. 4, H301",
        "'Acute Tox. 4, H301': H301 does not belong to Acute Tox. 4, whose statement is H302 or H312 or H332."
    )]
    [InlineData("Skin Sens. 1, H319", "'Skin Sens. 1, H319': H319 does not belong to Skin Sens. 1, whose statement is H317.")]
    public void What_cannot_be_read_is_explained(string text, string expected)
    {
        Assert.Equal(expected, TestLaw.Lawbook.Vocabulary.Parse(text).Reason);
    }

    [Fact]
    public void Categories_are_told_apart()
    {
        HazardVocabulary vocabulary = TestLaw.Lawbook.Vocabulary;
        Assert.Null(vocabulary.Find("Skin Sens. 9"));
        HazardCategory first = vocabulary.Categories[0];
        HazardCategory second = vocabulary.Categories[1];
        HazardCategory namesake = second with { Index = first.Index };
        Assert.False(first.Equals(second));
        Assert.False(first.Equals(null));
        Assert.False(first.Equals(namesake));
        Assert.False(second.Equals(namesake));
        Assert.Null(TestLaw.Lawbook.FindPlace("XX"));
        Assert.Throws<InvalidOperationException>(() => TestLaw.Lawbook.Edition("of the moon"));
    }

    [Theory]
    [InlineData("Benzaldehyde", "aldehyde")]
    [InlineData("Hexyl cinnamal", "aldehyde")]
    [InlineData("Citral", "aldehyde")]
    [InlineData("Ethyl vanillin", "aldehyde and phenol")]
    [InlineData("Piperonal", "aldehyde")]
    [InlineData("Octanal", "aldehyde")]
    [InlineData("Nonanal", "aldehyde")]
    [InlineData("Decanal", "aldehyde")]
    [InlineData("Undecanal", "aldehyde")]
    [InlineData("10-Undecenal", "aldehyde")]
    [InlineData("trans-2-Hexenal", "aldehyde")]
    [InlineData("2-Methyl-3-(p-isopropylphenyl)propanal", "aldehyde")]
    [InlineData("Hydroxycitronellal", "aldehyde")]
    [InlineData("4-Ethylphenol", "phenol")]
    [InlineData("Isoeugenol", "phenol")]
    [InlineData("Guaiacol", "phenol")]
    [InlineData("Thymol", "phenol")]
    [InlineData("Carvacrol", "phenol")]
    [InlineData("p-Cresol", "phenol")]
    [InlineData("Amyl salicylate", "phenol")]
    [InlineData("Benzoic acid", "acid")]
    [InlineData("Sodium dodecylbenzene sulfonate", "surfactant")]
    [InlineData("Sodium hydroxide", "base")]
    [InlineData("Triethanolamine", "base")]
    [InlineData("Linalool", null)]
    [InlineData("Paraffin wax", null)]
    [Outside(
        "CLP Annex I, 3.2.3.3.4.1 names acids, bases, inorganic salts, aldehydes, phenols and surfactants; which substance is which is chemistry's common knowledge"
    )]
    public void A_name_hints_at_the_kind(string name, string? kind) =>
        Assert.Equal(kind, NonAdditiveKinds.Of(new SubstanceIdentity(name, null, null), null));

    [Fact]
    public void The_list_decides_over_the_name()
    {
        var entry = new KnownSubstance("5392-40-5", null, ["Citral"], "acid", null);
        Assert.Equal("acid", NonAdditiveKinds.Of(new SubstanceIdentity("Citral", null, null), entry));
    }

    [Fact]
    public void Names_are_filled_into_a_statement()
    {
        LabelElements label = LabelElements.None with
        {
            Named =
            [
                new NamedSubstance("Citral", null, "test", Citation.None, IsBehindClass: false, IsSensitiser: true),
                new NamedSubstance("Linalool", null, "test", Citation.None, IsBehindClass: false, IsSensitiser: true),
                new NamedSubstance("Anethole", null, "test", Citation.None, IsBehindClass: true, IsSensitiser: false),
            ],
        };
        Language english = TestLaw.Lawbook.FindLanguage("en")!;
        Assert.Equal(
            "Contains Citral, Linalool. May produce an allergic reaction.",
            StatementText.Printed(english, StatementCode.Of("EUH208"), label)
        );
        Assert.Equal("May cause an allergic skin reaction.", StatementText.Printed(english, StatementCode.Of("H317"), label));
        InvalidOperationException none = Assert.Throws<InvalidOperationException>(() =>
            StatementText.Printed(english, StatementCode.Of("H499"), label)
        );
        Assert.Equal("English lacks the statement H499: its label cannot be printed.", none.Message);
    }

    [Fact]
    public void The_undeclared_rest_is_an_open_question()
    {
        string[] Said(double rest, params Ingredient[] lines) =>
            [.. OpenQuestions.Unassessed(TestLaw.Eu.NotComputed, TestLaw.Substances(TestLaw.Mixture(lines)), new MassPercent(rest))];

        Assert.Empty(Said(0.005));
        Assert.Equal(["Up to 0.51 % of the candle is not declared by anybody; what is in it was not assessed."], Said(0.51));
    }

    [Theory]
    [InlineData(4, "Flam. Liq. 3 (from oil 0, oil 1, oil 2, oil 3): ")]
    [InlineData(5, "Flam. Liq. 3 (from oil 0, oil 1, oil 2, oil 3, ...): ")]
    public void What_is_not_computed_names_its_first_four_causes(int count, string start)
    {
        Ingredient[] lines = [.. Enumerable.Range(0, count).Select(i => TestLaw.Line($"oil {i}", 2, ["Flam. Liq. 3, H226"]))];
        string said = Assert.Single(
            OpenQuestions.Unassessed(TestLaw.Eu.NotComputed, TestLaw.Substances(TestLaw.Mixture(lines)), MassPercent.Zero)
        );
        Assert.StartsWith(start, said, StringComparison.Ordinal);
    }
}
