using Chandlery.Tests.Support;

namespace Chandlery.Tests.SecondCalculation;

/// <summary>The second calculation itself against examples worked by hand from the clauses, on both sides of each limit.</summary>
public sealed class WorkedExampleTests
{
    [Theory]
    [InlineData("4.99 | Skin Corr. 1A, H314", "Eye Dam. 1, Skin Irrit. 2")]
    [InlineData("5 | Skin Corr. 1A, H314", "Eye Dam. 1, Skin Corr. 1A")]
    [InlineData("3 | Skin Corr. 1A, H314 + 2 | Skin Corr. 1B, H314", "Eye Dam. 1, Skin Corr. 1B")]
    [InlineData("3 | Skin Corr. 1A, H314 + 2 | Skin Corr. 1C, H314", "Eye Dam. 1, Skin Corr. 1C")]
    [InlineData("3 | Skin Corr. 1A, H314 + 2 | Skin Corr. 1, H314", "Eye Dam. 1, Skin Corr. 1")]
    [InlineData("0.99 | Skin Corr. 1A, H314", "")]
    [InlineData("4.5 | Skin Corr. 1A, H314 + 0.5 | Skin Corr. 1A, H314", "Eye Dam. 1, Skin Corr. 1A")]
    [InlineData("4.5 | Skin Corr. 1A, H314 + 0.49 | Skin Corr. 1A, H314", "Eye Dam. 1, Skin Irrit. 2")]
    [InlineData("9.2 | Skin Irrit. 2, H315 + 0.9 | Skin Irrit. 2, H315", "")]
    [InlineData("9.99 | Skin Irrit. 2, H315", "")]
    [InlineData("10 | Skin Irrit. 2, H315", "Skin Irrit. 2")]
    [InlineData("5 | Skin Irrit. 2, H315 + 5 | Skin Irrit. 2, H315", "Skin Irrit. 2")]
    [Outside("CLP Annex I, Table 3.2.3 with its note, Table 1.1, 3.2.3.3.1")]
    public void Skin(string mixture, string classes) => Gives(mixture, classes);

    [Theory]
    [InlineData(
        "5 | Skin Corr. 1A, H314 | Skin Corr. 1A, H314: 5 | Skin Corr. 1B, H314: 2 to 5 | Skin Irrit. 2, H315: 0.5 to 2",
        "Eye Dam. 1, Skin Corr. 1A"
    )]
    [InlineData(
        "3 | Skin Corr. 1A, H314 | Skin Corr. 1A, H314: 5 | Skin Corr. 1B, H314: 2 to 5 | Skin Irrit. 2, H315: 0.5 to 2",
        "Eye Dam. 1, Skin Corr. 1B"
    )]
    [InlineData(
        "3 | Skin Corr. 1A, H314 | Skin Irrit. 2, H315: 0.5 to 2 | Skin Corr. 1B, H314: 2 to 5 | Skin Corr. 1A, H314: 5",
        "Eye Dam. 1, Skin Corr. 1B"
    )]
    [InlineData(
        "1.9 | Skin Corr. 1A, H314 | Skin Corr. 1A, H314: 5 | Skin Corr. 1B, H314: 2 to 5 | Skin Irrit. 2, H315: 0.5 to 2",
        "Eye Irrit. 2, Skin Irrit. 2"
    )]
    [InlineData("0.49 | Skin Corr. 1A, H314 | Skin Corr. 1A, H314: 5 | Skin Corr. 1B, H314: 2 to 5 | Skin Irrit. 2, H315: 0.5 to 2", "")]
    [InlineData("3 | Skin Corr. 1B, H314 | Skin Corr. 1B, H314: 5 + 2 | Skin Corr. 1B, H314", "Eye Dam. 1, Skin Corr. 1B")]
    [InlineData("12.5 | Skin Corr. 1B, H314 | Skin Corr. 1B, H314: 25 | Skin Irrit. 2, H315: 10 to 25", "Eye Dam. 1, Skin Irrit. 2")]
    [InlineData(
        "5 | Skin Corr. 1B, H314 | Skin Corr. 1B, H314: 25 | Skin Irrit. 2, H315: 10 to 25 + 5 | Skin Irrit. 2, H315",
        "Eye Dam. 1, Skin Irrit. 2"
    )]
    [Outside("CLP Art. 10, Annex I, 1.1.2.2.2 and 3.2.3.3.5; share over limit from memory of ECHA's guidance")]
    public void Graduated_limits_of_skin_corrosion(string mixture, string classes) => Gives(mixture, classes);

    [Theory]
    [InlineData("2.99 | Eye Dam. 1, H318", "Eye Irrit. 2")]
    [InlineData("3 | Eye Dam. 1, H318", "Eye Dam. 1")]
    [InlineData("1.5 | Eye Dam. 1, H318 + 1.5 | Skin Corr. 1B, H314", "Eye Dam. 1, Skin Irrit. 2")]
    [InlineData("2 | Skin Corr. 1B, H314 | Eye Dam. 1, H318", "Eye Irrit. 2, Skin Irrit. 2")]
    [InlineData("0.9 | Eye Dam. 1, H318", "")]
    [InlineData("9.99 | Eye Irrit. 2, H319", "")]
    [InlineData("10 | Eye Irrit. 2, H319", "Eye Irrit. 2")]
    [Outside("CLP Annex I, Table 3.3.3")]
    public void Eyes(string mixture, string classes) => Gives(mixture, classes);

    [Theory]
    [InlineData("1.5 | Skin Corr. 1B, H314 | Eye Dam. 1, H318: 1", "Eye Dam. 1, Skin Irrit. 2")]
    [InlineData("1.5 | Skin Corr. 1B, H314 | Eye Dam. 1, H318 | Eye Dam. 1, H318: 1", "Eye Dam. 1, Skin Irrit. 2")]
    [InlineData("0.99 | Skin Corr. 1B, H314 | Eye Dam. 1, H318: 1", "")]
    [InlineData(
        "0.3 | Skin Corr. 1C, H314 | Eye Dam. 1, H318 | Skin Corr. 1C, H314: 5 | Skin Irrit. 2, H315: 1 to 5 | Eye Dam. 1, H318: 1 | Eye Irrit. 2, H319: 0.2 to 1",
        "Eye Irrit. 2"
    )]
    [InlineData(
        "0.19 | Skin Corr. 1C, H314 | Eye Dam. 1, H318 | Skin Corr. 1C, H314: 5 | Skin Irrit. 2, H315: 1 to 5 | Eye Dam. 1, H318: 1 | Eye Irrit. 2, H319: 0.2 to 1",
        ""
    )]
    [InlineData("4 | Skin Corr. 1B, H314 | Eye Dam. 1, H318: 10 | Eye Irrit. 2, H319: 5 to 10", "Skin Irrit. 2")]
    [Outside("CLP Art. 10, Annex I, 1.1.2.2.2 and 3.3.3.3.5: a corrosive ingredient's own limits for eyes")]
    public void Eye_limits_of_a_corrosive_count(string mixture, string classes) => Gives(mixture, classes);

    [Theory]
    [InlineData("40 | Acute Tox. 3, H331 | vapour 15 | dust 0.4", "Acute Tox. 3 (inhalation)")]
    [InlineData("40 | vapour 15 | dust 0.4", "Acute Tox. 3 (inhalation)")]
    [InlineData("40 | dust 0.4", "Acute Tox. 3 (inhalation)")]
    [InlineData("40 | vapour 15", "")]
    [InlineData("20 | dust 1", "Acute Tox. 4 (inhalation)")]
    [InlineData("19.9 | dust 1", "")]
    [InlineData("0.552 | dust 0.00276", "Acute Tox. 2 (inhalation)")]
    [InlineData("0.551 | dust 0.00276", "Acute Tox. 3 (inhalation)")]
    [InlineData("29 | dust 0.3", "Acute Tox. 4 (inhalation)")]
    [InlineData("30 | dust 0.3", "Acute Tox. 3 (inhalation)")]
    [InlineData("20 | gas 4000", "Acute Tox. 4 (inhalation)")]
    [InlineData("19.9 | gas 4000", "")]
    [InlineData("15 | Acute Tox. 3, H331", "Acute Tox. 4 (inhalation)")]
    [InlineData("30 | Acute Tox. 3, H331", "Acute Tox. 3 (inhalation)")]
    [Outside("CLP Annex I, Tables 3.1.1 and 3.1.2, 3.1.3.6.1")]
    public void Each_form_breathed_has_its_own_scale(string mixture, string classes) => Gives(mixture, classes);

    [Theory]
    [InlineData("25 | Acute Tox. 4, H302", "Acute Tox. 4 (oral)")]
    [InlineData("24.9 | Acute Tox. 4, H302", "")]
    [InlineData("25 | Acute Tox. 4, H302 | oral 2500", "Acute Tox. 4 (oral)")]
    [InlineData("25 | Acute Tox. 4, H302 | oral 1000", "")]
    [InlineData("100 | oral 2000", "Acute Tox. 4 (oral)")]
    [InlineData("100 | oral 2001", "")]
    [InlineData("0.099 | oral 0.1", "")]
    [InlineData("0.1 | oral 0.1", "Acute Tox. 3 (oral)")]
    [Outside("CLP Annex I, Tables 1.1, 3.1.1 and 3.1.2, 3.1.3.6.1")]
    public void Swallowed(string mixture, string classes) => Gives(mixture, classes);

    [Theory]
    [InlineData("23 | Acute Tox. 4, H302 + 10 | undeclared", "")]
    [InlineData("23 | Acute Tox. 4, H302 + 7 | unknown + 3 | undeclared", "")]
    [InlineData("23 | Acute Tox. 4, H302 + 10.001 | undeclared", "Acute Tox. 4 (oral)")]
    [InlineData("23 | Acute Tox. 4, H302 + 7.001 | unknown + 3 | undeclared", "Acute Tox. 4 (oral)")]
    [Outside("CLP Annex I, 3.1.3.6.2.3 (worked examples of the same rule in UN GHS)")]
    public void Exactly_a_tenth_unknown_is_not_more_than_a_tenth(string mixture, string classes) => Gives(mixture, classes);

    [Theory]
    [InlineData("0.9 | unknown + 0.9 | unknown", null)]
    [InlineData("1 | unknown + 0.5 | unknown", 1.5)]
    [InlineData("1 | undeclared", 1.0)]
    [InlineData("5 | Skin Irrit. 2, H315", null)]
    [Outside("CLP Annex I, 3.1.3.6.2.2 (from memory): one ingredient of 1 % or more without usable data")]
    public void Unknown_acute_toxicity_is_stated(string mixture, double? percent) => Assert.Equal(percent, Answer(mixture).UnknownPercent);

    [Theory]
    [InlineData("25 | Aquatic Acute 1, H400", "Aquatic Acute 1")]
    [InlineData("24.9 | Aquatic Acute 1, H400", "")]
    [InlineData("2.5 | Aquatic Acute 1, H400 | acuteM 10", "Aquatic Acute 1")]
    [InlineData("0.25 | Aquatic Chronic 1, H410 | chronicM 100", "Aquatic Chronic 1")]
    [InlineData("2.5 | Aquatic Chronic 1, H410", "Aquatic Chronic 2")]
    [InlineData("0.25 | Aquatic Chronic 1, H410", "Aquatic Chronic 3")]
    [InlineData("20 | Aquatic Chronic 4, H413 + 5 | Aquatic Chronic 4, H413", "Aquatic Chronic 4")]
    [InlineData("0.9 | Aquatic Chronic 2, H411 + 20 | Aquatic Chronic 3, H412", "")]
    [InlineData("1 | Aquatic Chronic 2, H411 + 20 | Aquatic Chronic 3, H412", "Aquatic Chronic 3")]
    [Outside("CLP Annex I, 4.1.3.1, Tables 4.1.1 and 4.1.2")]
    public void Water(string mixture, string classes) => Gives(mixture, classes);

    [Theory]
    [InlineData("0.002 | Aquatic Chronic 1, H410 | chronicM 100 + 24.998 | Aquatic Chronic 4, H413", "Aquatic Chronic 4")]
    [InlineData("0.002 | Aquatic Chronic 1, H410 | chronicM 10 + 24.998 | Aquatic Chronic 4, H413", "")]
    [InlineData("0.002 | Aquatic Chronic 1, H410 | chronicM 100 + 24.997 | Aquatic Chronic 4, H413", "")]
    [Outside("CLP Annex I, 4.1.3.1 and 4.1.3.5.5.5: the cut-off of a Chronic 1 is 0.1/M in every sum")]
    public void The_cut_off_with_M_holds_in_the_sum_of_Chronic_4(string mixture, string classes) => Gives(mixture, classes);

    [Theory]
    [InlineData("1 | Skin Sens. 1B, H317", "Skin Sens. 1B")]
    [InlineData("0.99 | Skin Sens. 1B, H317 + 0.99 | Skin Sens. 1B, H317", "")]
    [InlineData("0.1 | Skin Sens. 1A, H317", "Skin Sens. 1A")]
    [InlineData("0.099 | Skin Sens. 1A, H317", "")]
    [InlineData("0.01 | Skin Sens. 1A, H317 | Skin Sens. 1A, H317: 0.01", "Skin Sens. 1A")]
    [InlineData("0.01 | Skin Sens. 1A, H317 | Skin Sens. 1, H317: 0.01", "Skin Sens. 1A")]
    [InlineData("1 | Skin Sens. 1, H317 | Skin Sens. 1, H317: 2", "")]
    [InlineData("0.1 | Muta. 1B, H340", "Muta. 1B")]
    [InlineData("0.3 | Repr. 1B, H360 + 0.3 | Lact., H362", "Lact., Repr. 1B")]
    [InlineData("2.99 | Repr. 2, H361", "")]
    [InlineData("1 | STOT RE 1, H372", "STOT RE 2")]
    [InlineData("10 | STOT RE 1, H372", "STOT RE 1")]
    [InlineData("10 | STOT RE 1, H372 (kidneys)", "STOT RE 1")]
    [InlineData("0.1000000000001 | Skin Sens. 1A, H317", "Skin Sens. 1A")]
    [InlineData("9.99 | STOT SE 2, H371", "")]
    [InlineData("10 | STOT SE 3, H335 + 10 | STOT SE 3, H336", "")]
    [InlineData("10 | STOT SE 3, H335 + 10 | STOT SE 3, H335", "STOT SE 3 (respiratory irritation)")]
    [InlineData("5 | Skin Corr. 1B, H314 | STOT SE 3, H335: 5", "Eye Dam. 1, STOT SE 3 (respiratory irritation), Skin Corr. 1B")]
    [InlineData("0.1 | ED HH 1, EUH380 + 1 | ED ENV 2, EUH431", "ED ENV 2, ED HH 1")]
    [InlineData("0.1 | Ozone 1, H420", "Ozone 1")]
    [Outside("CLP Annex I, Tables 3.4.5, 3.5.2, 3.6.2, 3.7.2, 3.8.3, 3.9.4, 3.11.2, 4.2.2, 5.1, 3.8.3.4.5; Annex VI 605-001-00-5")]
    public void Other_classes(string mixture, string classes) => Gives(mixture, classes);

    [Theory]
    [InlineData("0.1 | PBT, EUH440 | vPvB, EUH441", "PBT, vPvB", "EUH441")]
    [InlineData("0.1 | PMT, EUH450 | vPvM, EUH451", "PMT, vPvM", "EUH451")]
    [InlineData("0.1 | PBT, EUH440", "PBT", "EUH440")]
    [InlineData("0.099 | vPvB, EUH441", "", "")]
    [Outside("CLP Annex I, 4.3.3.1 and 4.4.3.1; Annex III Part 1(c) and (d): one statement goes, both classes stay")]
    public void Both_classes_stay_where_one_statement_goes(string mixture, string classes, string statements)
    {
        Gives(mixture, classes);
        Assert.Equal(statements, string.Join(" ", Answer(mixture).Label.Statements));
    }

    [Theory]
    [InlineData("1 | Skin Sens. 1B, H317 + 0.1 | Skin Sens. 1B, H317", "s1 s2", "H317")]
    [InlineData("0.1 | Skin Sens. 1B, H317", "s1", "EUH208")]
    [InlineData("0.0999 | Skin Sens. 1B, H317", "", "")]
    [InlineData("0.01 | Skin Sens. 1A, H317", "s1", "EUH208")]
    [InlineData("0.001 | Skin Sens. 1A, H317 | Skin Sens. 1A, H317: 0.01", "s1", "EUH208")]
    [InlineData("0.2 | Skin Sens. 1B, H317 | Skin Sens. 1B, H317: 5", "", "")]
    [InlineData("0.5 | Skin Sens. 1B, H317 | Skin Sens. 1B, H317: 5", "s1", "EUH208")]
    [InlineData("1 | Skin Sens. 1B, H317 + 0.1 | Resp. Sens. 1, H334", "s1 s2", "H317")]
    [Outside("CLP Annex II, 2.8; Annex I, Table 3.4.6 with note 1")]
    public void Sensitisers_are_named(string mixture, string names, string statements)
    {
        SecondAnswer answer = Answer(mixture);
        Assert.Equal(names, string.Join(" ", answer.Names.Sensitisers));
        Assert.Equal(statements, string.Join(" ", answer.Label.Statements));
    }

    [Theory]
    [InlineData("s1 s2 s3 s4", "no chief cause of Repr. 2 named: s5")]
    [InlineData("s1 s2 s3 s4 s5", "")]
    [InlineData("s1 s2 s4 s5", "sensitiser not named: s3")]
    [InlineData("s1 s2 s3 s4 s5 s6", "named without need: s6")]
    [Outside("CLP Art. 18(3)(b): the substances chiefly responsible for each major hazard; Annex II, 2.8: every sensitiser")]
    public void Four_sensitisers_do_not_push_off_another_cause(string named, string fault)
    {
        NamesOnLabel names = Answer(
            "2 | Skin Sens. 1B, H317 + 3 | Skin Sens. 1B, H317 + 4 | Skin Sens. 1B, H317 + 5 | Skin Sens. 1B, H317 + 3 | Repr. 2, H361 + 30 | Skin Irrit. 2, H315"
        ).Names;
        Assert.Equal(fault, string.Join("; ", names.Faults(named.Split(' '))));
    }

    [Theory]
    [InlineData("5 | Eye Dam. 1, H318 + 20 | Skin Irrit. 2, H315", "GHS05", "Danger", "H315 H318")]
    [InlineData("5 | Eye Dam. 1, H318 + 2 | Skin Sens. 1B, H317", "GHS05 GHS07", "Danger", "H317 H318")]
    [InlineData("2 | Resp. Sens. 1B, H334 + 2 | Skin Sens. 1B, H317 + 20 | Eye Irrit. 2, H319", "GHS08", "Danger", "H317 H319 H334")]
    [InlineData("2 | Carc. 2, H351 + 2 | Skin Sens. 1B, H317", "GHS07 GHS08", "Warning", "H317 H351")]
    [InlineData("30 | Acute Tox. 1, H300 + 2 | Skin Sens. 1B, H317", "GHS06", "Danger", "H300 H317")]
    [InlineData("6 | Skin Corr. 1B, H314", "GHS05", "Danger", "H314")]
    [InlineData("25 | Aquatic Acute 1, H400 | Aquatic Chronic 3, H412", "GHS09", "Warning", "H410")]
    [InlineData("25 | Aquatic Acute 1, H400 | Aquatic Chronic 4, H413", "GHS09", "Warning", "H400 H413")]
    [InlineData("25 | Aquatic Chronic 2, H411", "GHS09", "", "H411")]
    [InlineData("0.3 | Repr. 1B, H360D + 0.3 | Repr. 1B, H360Fd", "GHS08", "Danger", "H360FD")]
    [InlineData("3 | Repr. 2, H361d + 3 | Repr. 2, H361f", "GHS08", "Warning", "H361fd")]
    [InlineData("3 | Repr. 2, H361d + 3 | Repr. 2, H361", "GHS08", "Warning", "H361")]
    [Outside("CLP Annex III, Annex VI 1.1.2.1.2: letters of H360 and H361 (joining them from memory)")]
    [Outside("CLP Art. 20 and 26(1)(b) to (d), Annex III Part 1, label columns of Annex VI for Acute 1 with Chronic 3")]
    public void Label(string mixture, string pictograms, string word, string statements)
    {
        SecondLabel label = Answer(mixture).Label;
        Assert.Equal(
            (pictograms, word, statements),
            (string.Join(" ", label.Pictograms), label.SignalWord, string.Join(" ", label.Statements))
        );
    }

    private static SecondAnswer Answer(string mixture) => SecondClassifier.Answer(MixtureText.Read(mixture), SecondEdition.Union);

    private static void Gives(string mixture, string classes) => Assert.Equal(classes, string.Join(", ", Answer(mixture).Classes));
}
