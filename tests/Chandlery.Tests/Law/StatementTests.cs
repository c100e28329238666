using System.Text.RegularExpressions;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Hazards;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

public class StatementTests
{
    // Where the law changed after the package was made, or the package has a slip of its own.
    private static readonly Dictionary<string, string> Justified = new()
    {
        ["es H226"] = "the law's Spanish text has the plural (from memory); the package the singular",
        ["fr H314"] = "reworded by an adaptation after the package was made (from memory)",
        ["fr H318"] = "reworded by an adaptation after the package was made (from memory)",
        ["fr H361"] = "the package leaves the unborn child out; its own H361d has it",
        ["it H350i"] = "the consolidated text of 1 September 2025 says 'provocare' as in H350; the package 'causare'",
        ["de H410"] = "the consolidated text of 1 September 2025 has no comma here, as in none of its sisters; the package has",
        ["es H361"] = "the consolidated text of 1 September 2025 says 'puede perjudicar ... o dañar el feto'",
        ["es EUH018"] = "the consolidated text of 1 September 2025 has the words in another order than the package",
    };

    // What the act words for the public in a language of which no text could be had: such a label is refused.
    private static readonly Dictionary<string, string[]> NotAtHand = new()
    {
        ["bg"] = ["P320"],
        ["cs"] = ["P320"],
        ["da"] = ["P502"],
        ["el"] = ["P320", "P502"],
        ["et"] = ["P320"],
        ["fi"] = ["P320", "P502"],
        ["fr"] = ["P320"],
        ["ga"] = ["H350i", "H360D", "H360Df", "H360F", "H360FD", "H360Fd", "H361d", "H361f", "H361fd", "P320"],
        ["hr"] = ["P320", "P502"],
        ["hu"] = ["P320", "P502"],
        ["it"] = ["P502"],
        ["lt"] = ["P502"],
        ["lv"] = ["P320"],
        ["mt"] = ["P210", "P263", "P320"],
        ["pt"] = ["P320"],
        ["ro"] = ["P320", "P502"],
        ["sl"] = ["P320"],
        ["sv"] = ["P320"],
    };

    // The act has no text of what only the UN GHS has; of classes for aerosols, vapours and corrosive dust some texts are missing.
    private static readonly string[] NotOfTheUnion =
    [
        "H227",
        "H303",
        "H305",
        "H313",
        "H316",
        "H320",
        "H333",
        "H401",
        "H402",
        "GHS-ELICITATION",
    ];

    private static readonly string[] MissingInSome = ["H222", "H223", "H229", "EUH018", "EUH071", "EUH209", "EUH209A", "EUH211", "EUH212"];

    private static readonly (string Code, string File)[] Compared =
    [
        ("en", "english"),
        ("de", "german"),
        ("fr", "french"),
        ("es", "spanish"),
        ("it", "italian"),
    ];

    /// <summary>Every H and EUH statement that both have, one check each.</summary>
    public static TheoryData<string, string, string> SharedStatements()
    {
        var data = new TheoryData<string, string, string>();
        foreach ((string code, string file) in Compared)
        {
            Dictionary<string, string> theirs = GhsystemFile.Read(file);
            foreach (
                string statement in TestLaw
                    .Lawbook.FindLanguage(code)!
                    .Official.Keys.Select(k => k.Text)
                    .Where(k => k[0] is 'H' or 'E' && theirs.ContainsKey(k))
            )
            {
                data.Add(code, file, statement);
            }
        }

        return data;
    }

    [Outside("LaTeX package ghsystem (Debian texlive-science): independent transcription of CLP Annexes II and III")]
    [Theory]
    [MemberData(nameof(SharedStatements))]
    public void HazardStatementsAgreeWithAnIndependentTranscription(string code, string file, string statement)
    {
        string ours = GhsystemFile.Normalise(TestLaw.Lawbook.FindLanguage(code)!.Official[StatementCode.Of(statement)]);
        string theirs = GhsystemFile.Read(file)[statement];
        if (Justified.ContainsKey($"{code} {statement}"))
        {
            Assert.NotEqual(theirs, ours);
        }
        else
        {
            Assert.Equal(theirs, ours);
        }
    }

    [Fact]
    public void TheComparisonIsBroad() => Assert.True(SharedStatements().Count > 250);

    [Fact]
    public void EveryLanguageHasEveryStatementThatItsPlacesMayNeed()
    {
        // Where the label shows no hazards and sheets are refused, no statement is printed.
        foreach (Edition edition in TestLaw.Lawbook.Editions.Where(e => e.Label.Shows != LabelContent.BurnSafety))
        {
            var needed = new HashSet<StatementCode>(edition.Rules.SelectMany(Results).Select(r => r.Statement));
            needed.UnionWith(edition.Precautions.Offers.Where(o => o.Use != PrecautionUse.Drop).Select(o => o.Code));
            needed.UnionWith(edition.Rules.OfType<LimitRule>().Select(r => r.Elicitation?.Statement).OfType<StatementCode>());
            IEnumerable<string> languages = TestLaw
                .Lawbook.Places.Where(p => p.EditionId == edition.Id)
                .SelectMany(p => p.Languages)
                .Select(l => l.Text)
                .Distinct();
            foreach (
                Language language in languages.Select(TestLaw.Lawbook.FindLanguage).OfType<Language>().Where(l => l.Code != OwnWordsOnly)
            )
            {
                Assert.Empty(
                    needed
                        .Where(code => language.Statement(code) is null && !IsNotAtHand(language, code))
                        .Select(code => $"{edition.Id}: {language.Code} lacks {code}")
                );
            }
        }
    }

    [Fact]
    public void EveryLanguageHasTheHazardStatementsThatEnglishHas()
    {
        IEnumerable<StatementCode> all = TestLaw
            .Lawbook.FindLanguage("en")!
            .Official.Keys.Where(c => c.Text[0] != 'P' && !NotOfTheUnion.Contains(c.Text) && !MissingInSome.Contains(c.Text));
        Assert.All(
            WithStatements,
            language => Assert.DoesNotContain(all, c => !language.Official.ContainsKey(c) && !IsNotAtHand(language, c))
        );
    }

    [Fact]
    public void WhatIsNotAtHandIsNotThere() =>
        Assert.All(
            NotAtHand,
            missing =>
                Assert.All(missing.Value, code => Assert.Null(TestLaw.Lawbook.FindLanguage(missing.Key)!.Statement(StatementCode.Of(code))))
        );

    [Fact]
    public void AllOfficialLanguagesOfTheUnionAreThere() =>
        Assert.Equal(
            "bg cs da de el en es et fi fr ga hr hu it lt lv mt nl pl pt ro sk sl sv".Split(' '),
            WithStatements.Select(l => l.Code)
        );

    // Norway's own act is not at hand: a label there bears words of our own only, or none is printed.
    private const string OwnWordsOnly = "no";

    private static IEnumerable<Language> WithStatements => TestLaw.Lawbook.Languages.Where(l => l.Code != OwnWordsOnly);

    [Fact]
    public void Norwegian_has_no_statement_at_all()
    {
        Language norwegian = TestLaw.Lawbook.FindLanguage(OwnWordsOnly)!;
        Assert.Empty(norwegian.Official.Keys.Concat(norwegian.Printed.Keys));
        Assert.Contains(OwnWordsOnly, TestLaw.Lawbook.WithoutTexts.Keys);
    }

    [Fact]
    public void WhatIsPrintedHasNoDotsNoChoiceLeftAndNoBlank()
    {
        HashSet<StatementCode> offered =
        [
            .. TestLaw.Lawbook.Editions.SelectMany(e => e.Precautions.Offers).Where(o => o.Use != PrecautionUse.Drop).Select(o => o.Code),
        ];
        foreach (Language language in TestLaw.Lawbook.Languages)
        {
            foreach (StatementCode code in language.Official.Keys)
            {
                string text = language.Statement(code)!;
                Assert.False(text.Contains('<') || text.Contains('>') || text.Contains("  "), $"{language.Code} {code}: {text}");
                Assert.True(text[^1] is '.' or '!' or '?' or ':', $"{language.Code} {code}: {text}");
                Assert.False(
                    offered.Contains(code) && (text.Contains('…') || text.Contains("..") || text.Contains('[')),
                    $"{language.Code} {code}: {text}"
                );
            }
        }
    }

    [Outside("CLP Annex II, 2.8 (consolidated text of 1 September 2025): the words around the name, in each language")]
    [Theory]
    [InlineData("en", "Contains Citral, Linalool. May produce an allergic reaction.")]
    [InlineData("bg", "Съдържа Citral, Linalool. Може да предизвика алергична реакция.")]
    [InlineData("et", "Sisaldab Citral, Linalool. Võib esile kutsuda allergilise reaktsiooni.")]
    [InlineData("hu", "Citral, Linalool-t tartalmaz. Allergiás reakciót válthat ki.")]
    [InlineData("ga", "Citral, Linalool ann. D'fhéadfadh sé a bheith ina chúis le frithghníomh ailléirgeach.")]
    public void Names_stand_where_the_language_has_them(string code, string expected)
    {
        LabelElements label = LabelElements.None with
        {
            Named =
            [
                new NamedSubstance("Citral", null, "test", Citation.None, false, true),
                new NamedSubstance("Linalool", null, "test", Citation.None, false, true),
            ],
        };
        Assert.Equal(expected, StatementText.Printed(TestLaw.Lawbook.FindLanguage(code)!, StatementCode.Of("EUH208"), label));
    }

    [Theory]
    [InlineData("en", "Contains: Citral, Linalool.")]
    [InlineData("ga", "Citral, Linalool ann.")]
    public void The_line_of_names_is_a_pattern_too(string code, string expected) =>
        Assert.Equal(expected, StatementText.Contains(TestLaw.Lawbook.FindLanguage(code)!, ["Citral", "Linalool"]));

    [Fact]
    public void NoTextIsThatOfAnotherLanguage()
    {
        // Danish and Swedish happen to say the same.
        const string Cousins = "H223";
        foreach (
            IGrouping<(string Code, string Text), string> shared in TestLaw
                .Lawbook.Languages.SelectMany(l => l.Official.Select(t => (t.Key.Text, t.Value, l.Code)))
                .GroupBy(t => (t.Text, t.Value), t => t.Code)
        )
        {
            Assert.True(shared.Count() == 1 || shared.Key.Code == Cousins, $"{shared.Key.Code} in {string.Join(", ", shared)}");
        }
    }

    [Fact]
    public void EveryWordIsOfOneAlphabet()
    {
        foreach (Language language in TestLaw.Lawbook.Languages)
        {
            foreach ((StatementCode code, string text) in language.Official.Concat(language.Printed))
            {
                foreach (
                    string word in System.Text.RegularExpressions.Regex.Matches(text.Replace("{names}", ""), @"\p{L}+").Select(m => m.Value)
                )
                {
                    Assert.True(word.Select(Alphabet).Distinct().Count() == 1, $"{language.Code} {code}: {word}");
                }
            }
        }
    }

    [Fact]
    public void WhatStandsApartIsThere() =>
        Assert.All(TestLaw.Lawbook.Languages, language => Assert.Empty(language.Apart.Keys.Except(language.Official.Keys)));

    [Fact]
    public void WhatOneLanguageLeavesOpenAllLeaveOpen() =>
        Assert.All(
            TestLaw.Lawbook.Languages,
            language =>
                Assert.All(
                    TestLaw.Lawbook.FindLanguage("en")!.Words.Where(w => language.Words.ContainsKey(w.Key)),
                    word => Assert.Equal(Marks(word.Value), Marks(language.Words[word.Key]))
                )
        );

    // Where the act words the combination otherwise than its parts (consolidated text of 1 September 2025).
    private static readonly string[] CombinedOtherwise =
    [
        "cs P306+P360",
        "de P410+P412",
        "el P231+P232",
        "el P304+P340",
        "el P306+P360",
        "en P336+P315",
        "es P403+P233",
        "it P301+P312",
        "it P370+P378",
        "it P403+P233",
        "it P403+P235",
        "lt P342+P311",
        "lv P231+P232",
        "lv P303+P361+P353",
        "lv P332+P313",
        "lv P333+P313",
        "lv P336+P315",
        "lv P402+P404",
        "lv P403+P235",
        "mt P301+P330+P331",
        "mt P306+P360",
        "mt P342+P311",
        "ro P362+P364",
    ];

    [Outside("CLP Annex IV, Part 2: a combination is made of its single statements, but for the wordings listed")]
    [Fact]
    public void CombinedStatementsAreTheirPartsJoined()
    {
        var otherwise = new List<string>();
        int compared = 0;
        foreach (Language language in TestLaw.Lawbook.Languages)
        {
            bool IsSure(StatementCode code) => language.Official.ContainsKey(code) && language.OriginOf(code).IsVerified;
            foreach (StatementCode code in language.Official.Keys.Where(c => c.Text.Contains('+') && IsSure(c)))
            {
                StatementCode[] parts = [.. code.Text.Split('+').Select(StatementCode.Of)];
                if (parts.All(IsSure))
                {
                    compared++;
                    if (Letters(language.Official[code]) != string.Concat(parts.Select(p => Letters(language.Official[p]))))
                    {
                        otherwise.Add($"{language.Code} {code}");
                    }
                }
            }
        }

        Assert.True(compared > 150);
        Assert.Equal(CombinedOtherwise, otherwise.Order(StringComparer.Ordinal));
    }

    private static string Letters(string text) =>
        new([.. text.Where(char.IsLetterOrDigit).Select(c => c == 'ς' ? 'σ' : char.ToLowerInvariant(c))]);

    private static bool IsNotAtHand(Language language, StatementCode code) =>
        NotAtHand.TryGetValue(language.Code, out string[]? codes) && codes.Contains(code.Text);

    private static string Alphabet(char letter) =>
        letter switch
        {
            >= '\u0370' and <= '\u03ff' or >= '\u1f00' and <= '\u1fff' => "Greek",
            >= '\u0400' and <= '\u04ff' => "Cyrillic",
            _ => "Latin",
        };

    private static readonly string[] OnlyInTheUnitedStates = ["usWarning", "astmSight", "astmFire", "astmChildren", "netWeight"];

    [Fact]
    public void EveryLanguageHasTheSameWordsAndMessages()
    {
        Language english = TestLaw.Lawbook.FindLanguage("en")!;
        foreach (Language language in TestLaw.Lawbook.Languages)
        {
            Assert.Empty(
                english.Words.Keys.Except(language.Words.Keys).Except(OnlyInTheUnitedStates).Select(k => $"{language.Code} lacks {k}")
            );
            Assert.Equal(english.Safety.Keys.Order(), language.Safety.Keys.Order());
            Assert.All(english.Safety, m => Assert.Equal(Marks(m.Value), Marks(language.Safety[m.Key])));
        }
    }

    private static IEnumerable<string> Marks(string message) =>
        System.Text.RegularExpressions.Regex.Matches(message, @"\{\w+\}").Select(m => m.Value).Order();

    private static IEnumerable<HazardCategory> Results(ClassRule rule) =>
        rule switch
        {
            LimitRule limit => limit.Rungs.Select(r => r.Result),
            AcuteToxicityRule acute => acute.Bounds.Select(b => b.Result),
            _ => [],
        };

    [Theory]
    [Outside(
        "CLP Annex IV, Part 1, P280: gloves for skin irritants and sensitisers, eye and face protection for H318 and H319, both for H314"
    )]
    [InlineData("H317", "Wear protective gloves.")]
    [InlineData("H315", "Wear protective gloves.")]
    [InlineData("H318", "Wear eye protection/face protection.")]
    [InlineData("H319", "Wear eye protection/face protection.")]
    [InlineData("H314", "Wear protective gloves/protective clothing/eye protection/face protection.")]
    [InlineData("H317 H318", "Wear protective gloves/protective clothing/eye protection/face protection.")]
    public void Protection_is_of_what_the_hazards_harm(string hazards, string expected)
    {
        PrecautionRules many = TestLaw.Eu.Precautions with { Most = 100 };
        LabelElements label = LabelElements.None with
        {
            Precautionary = PrecautionSelector.Select(many, [.. hazards.Split(' ').Select(StatementCode.Of)]).Chosen,
        };
        Assert.Contains(label.Precautionary, p => p.Code.Text == "P280");
        Assert.Equal(expected, StatementText.Printed(TestLaw.Lawbook.FindLanguage("en")!, StatementCode.Of("P280"), label));
    }

    [Fact]
    public void Protection_of_the_eyes_is_said_in_words_of_the_whole_statement()
    {
        StatementCode code = StatementCode.Of("P280");
        foreach (Language language in WithStatements)
        {
            string[] whole = Words(language.Official[code]);
            Assert.All(Words(language.ForEyes[code]), word => Assert.Contains(word, whole));
        }

        static string[] Words(string text) => [.. Regex.Matches(text, @"[\p{L}-]+").Select(m => m.Value.ToLowerInvariant())];
    }
}
