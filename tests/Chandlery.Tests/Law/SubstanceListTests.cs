using Chandlery.Core.Assessed;
using Chandlery.Core.Classified;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Law.AnnexVi;
using Chandlery.Core.Quantities;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law;

/// <summary>The table of harmonised classes, and what it does to a supplier's word.</summary>
public class SubstanceListTests
{
    private static SubstanceIdentity Substance(string cas, string name = "a substance") => new(name, CasNumber.Parse(cas).Value, null);

    private static HarmonisedEntry? On(string cas, DateOnly day) =>
        TestLaw.Lawbook.Substances.Find(Substance(cas), day, TestLaw.Eu.Harmonised).Entries.SingleOrDefault();

    private static string Classes(HarmonisedEntry? entry) =>
        entry is null ? "" : string.Join("; ", entry.Claims.Select(c => $"{c.Category.Code.Split(" (")[0]} {c.Statement}"));

    private static Substance Resolved(Ingredient line, Edition? edition = null) =>
        (edition ?? TestLaw.Eu)
            .On(TestLaw.Today)
            .Judge(TestLaw.Mixture(line))
            .Substances.Single(s => s.Ingredient.Identity == line.Identity);

    [Theory]
    [Outside("CLP Annex VI, Part 3, Table 3, consolidated text of 1 May 2026, read entry by entry")]
    [InlineData("104-55-2", "606-155-00-6", "Skin Sens. 1A H317", "Skin Sens. 1 0.01")]
    [InlineData("14371-10-9", "606-155-00-6", "Skin Sens. 1A H317", "Skin Sens. 1 0.01")]
    [InlineData(
        "99-86-5",
        "601-095-00-7",
        "Flam. Liq. 3 H226; Acute Tox. 4 H302; Skin Sens. 1 H317; Asp. Tox. 1 H304; Aquatic Chronic 2 H411",
        ""
    )]
    [InlineData("119-61-9", "606-153-00-5", "Carc. 1B H350", "")]
    [InlineData("5146-66-7", "608-067-00-3", "Muta. 1B H340", "")]
    [InlineData("1205-17-0", "605-042-00-9", "Skin Sens. 1B H317", "")]
    [InlineData("68039-49-6", "605-043-00-4", "Skin Sens. 1 H317", "")]
    [InlineData("69-72-7", "607-732-00-5", "Repr. 2 H361d; Acute Tox. 4 H302; Eye Dam. 1 H318", "")]
    [InlineData("107898-54-4", "603-150-00-0", "Skin Irrit. 2 H315; Aquatic Acute 1 H400; Aquatic Chronic 1 H410", "")]
    [InlineData("122-99-6", "603-098-00-9", "Acute Tox. 4 H302; STOT SE 3 H335; Eye Dam. 1 H318", "")]
    [InlineData("111-77-3", "603-107-00-6", "Repr. 1B H360D", "Repr. 1B 3")]
    [InlineData("541-85-5", "606-020-00-1", "Flam. Liq. 3 H226; STOT SE 3 H335; Eye Irrit. 2 H319", "STOT SE 3 10")]
    [InlineData("6259-76-3", "607-772-00-3", "Repr. 2 H361d; Skin Sens. 1 H317", "")]
    [InlineData("130066-44-3", "605-040-00-8", "Skin Sens. 1A H317", "")]
    [InlineData(
        "6876-12-6",
        "601-029-00-7",
        "Flam. Liq. 3 H226; Skin Irrit. 2 H315; Skin Sens. 1 H317; Aquatic Acute 1 H400; Aquatic Chronic 1 H410",
        ""
    )]
    [InlineData("97-54-1", "604-094-00-X", "Skin Sens. 1A H317", "Skin Sens. 1A 0.01")]
    [InlineData(
        "50-00-0",
        "605-001-00-5",
        "Carc. 1B H350; Muta. 2 H341; Acute Tox. 2 H330; Acute Tox. 4 H302; Skin Corr. 1B H314; Skin Sens. 1A H317",
        "STOT SE 3 5; Skin Corr. 1B 25; Skin Irrit. 2 5; Eye Irrit. 2 5"
    )]
    [InlineData(
        "64-18-6",
        "607-001-00-0",
        "Flam. Liq. 3 H226; Met. Corr. 1 H290; Acute Tox. 3 H331; Acute Tox. 4 H302; Skin Corr. 1A H314; Eye Dam. 1 H318",
        "Flam. Liq. 3 85; Skin Corr. 1A 90; Skin Corr. 1B 10; Skin Irrit. 2 2; Eye Dam. 1 10; Eye Irrit. 2 2"
    )]
    public void An_entry_says_what_the_law_says(string cas, string index, string classes, string limits)
    {
        HarmonisedEntry entry = On(cas, TestLaw.Today)!;
        Assert.Equal(index, entry.IndexNumber);
        Assert.Equal(classes.Split("; ").Order(), Classes(entry).Split("; ").Order());
        Assert.Equal(
            limits,
            string.Join("; ", entry.Limits.Select(l => $"{l.Category.Code.Split(" (")[0]} {Core.Quantities.Figures.Plain(l.From.Value)}"))
        );
    }

    [Theory]
    [Outside("Art. 2 of (EU) 2024/197 (1 September 2025), of (EU) 2024/2564 (1 May 2026), of (EU) 2025/1222 (1 February 2027)")]
    [InlineData("104-55-2", "2025-08-31", "")]
    [InlineData("104-55-2", "2025-09-01", "Skin Sens. 1A H317")]
    [InlineData("6259-76-3", "2026-04-30", "")]
    [InlineData("6259-76-3", "2026-05-01", "Repr. 2 H361d; Skin Sens. 1 H317")]
    [InlineData("2210-79-9", "2027-01-31", "Muta. 2 H341; Skin Irrit. 2 H315; Skin Sens. 1 H317; Aquatic Chronic 2 H411")]
    [InlineData("13463-67-7", "2025-07-31", "Carc. 2 H351")]
    [InlineData("13463-67-7", "2025-08-01", "")]
    [InlineData(
        "5989-27-5",
        "2022-12-16",
        "Flam. Liq. 3 H226; Skin Irrit. 2 H315; Skin Sens. 1 H317; Aquatic Acute 1 H400; Aquatic Chronic 1 H410"
    )]
    [InlineData(
        "5989-27-5",
        "2022-12-17",
        "Flam. Liq. 3 H226; Asp. Tox. 1 H304; Skin Irrit. 2 H315; Skin Sens. 1B H317; Aquatic Acute 1 H400; Aquatic Chronic 3 H412"
    )]
    public void The_version_in_force_on_the_day_counts(string cas, string day, string classes) =>
        Assert.Equal(classes, Classes(On(cas, DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture))));

    [Fact]
    [Outside("(EU) 2025/1222 (23rd ATP): 603-249-00-9 joins 603-056-00-X from 1 February 2027")]
    public void A_number_that_stands_in_two_entries_gets_the_worst_of_both()
    {
        Listing listing = TestLaw.Lawbook.Substances.Find(Substance("2210-79-9"), new DateOnly(2027, 2, 1), TestLaw.Eu.Harmonised);
        Assert.Equal(["603-056-00-X", "603-249-00-9"], listing.Entries.Select(e => e.IndexNumber).Order());
    }

    [Fact]
    [Outside("CLP Annex VI, Part 3, Table 3, after the 17th and after the 23rd adaptation, in copies of their own")]
    public void What_the_trade_meets_is_found_as_other_copies_of_the_table_have_it()
    {
        var wrong = new List<string>();
        foreach (string[] cells in TestFile.Lines("Law/AnnexVi/trade.tsv").Select(line => line.Split('\t')))
        {
            var identity = new SubstanceIdentity("a substance", CasNumber.Parse(cells[0]).OrNull(), EcNumber.Parse(cells[1]).OrNull());
            Listing listing = TestLaw.Lawbook.Substances.Find(identity, new DateOnly(2027, 2, 1), TestLaw.Eu.Harmonised);
            string found = string.Join(
                " and ",
                listing.Entries.Select(e =>
                    $"{e.IndexNumber} {Sorted(e.Classes.Select(c => c.Text).Where(c => !c.StartsWith("EUH", StringComparison.Ordinal)))}"
                )
            );
            string wanted = $"{cells[2]} {Sorted(cells[3].Split(" | "))}";
            if (found != wanted)
            {
                wrong.Add($"{cells[0]} {cells[1]}: {found} instead of {wanted}");
            }
        }

        Assert.Equal([], wrong);

        static string Sorted(IEnumerable<string> classes) => string.Join("; ", classes.Order(StringComparer.Ordinal));
    }

    [Fact]
    [Outside("CLP Annex VI, Part 3, Table 3, after the 17th and after the 23rd adaptation: not in it by CAS or EC number")]
    public void What_the_table_lacks_is_not_found()
    {
        string[] found =
        [
            .. TestFile.Lines("Law/AnnexVi/absent.txt").Where(cas => TestLaw.Lawbook.Substances.HistoriesOf(Substance(cas)).Count > 0),
        ];
        Assert.Empty(found);
    }

    [Fact]
    public void Every_line_of_the_table_is_read_whole()
    {
        AnnexTable table = TestLaw.Lawbook.Substances.Table!;
        List<EntryHistory> all = [.. table.All()];
        Assert.Equal(
            File.ReadLines(Path.Combine(TestLaw.Repository, "data", "substances", "annex-vi.tsv")).Count() - 1,
            all.Sum(h => h.Versions.Count)
        );
        Assert.Equal(all.Count, all.DistinctBy(h => h.IndexNumber).Count());
        foreach (HarmonisedEntry entry in all.SelectMany(h => h.Versions))
        {
            Assert.Equal(entry.Figures.Any(f => f.StartsWith("M = ", StringComparison.Ordinal)), entry.AcuteM is not null);
            int estimates = entry
                .Figures.Where(f => f.Contains("ATE = ", StringComparison.Ordinal))
                .Select(f => f.Split(':')[0])
                .Distinct()
                .Count();
            Assert.Equal(estimates, entry.Toxicity.Count);
            Assert.All(entry.Members.Select(m => m.Cas).OfType<string>(), cas => Assert.True(CasNumber.Parse(cas).Success, cas));
            Assert.All(entry.Members.Select(m => m.Ec).OfType<string>(), ec => Assert.True(EcNumber.Parse(ec).Success, ec));
            foreach (EntryMember member in entry.Members.Where(m => m.Cas is not null))
            {
                Assert.Contains(table.Of(Substance(member.Cas!)), h => h.IndexNumber == entry.IndexNumber);
            }
        }

        Assert.Equal(
            ["617-002-00-8: STOT SE 3, H335: C < 10 %"],
            all.SelectMany(h => h.Versions).SelectMany(e => e.Unread.Select(u => $"{e.IndexNumber}: {u}")).Distinct()
        );
    }

    [Fact]
    public void A_substance_without_a_CAS_number_is_found_by_its_EC_number()
    {
        var identity = new SubstanceIdentity("a substance", null, EcNumber.Parse("203-213-9").Value);
        Assert.Equal(
            "606-155-00-6",
            TestLaw.Lawbook.Substances.Find(identity, TestLaw.Today, TestLaw.Eu.Harmonised).Entries.Single().IndexNumber
        );
    }

    [Outside("CLP Art. 4(3): the harmonised class binds; a supplier cannot go below it; 604-094-00-X, isoeugenol")]
    [Fact]
    public void A_harmonised_class_overrides_a_weaker_one_and_says_so()
    {
        Substance s = Resolved(TestLaw.Line("Isoeugenol", 0.02, ["Skin Sens. 1B, H317"], cas: "97-54-1"));
        Assert.Equal("Skin Sens. 1A", s.Hazards.Single().Category.Code);
        Assert.Contains(s.Remarks, r => r.Contains("harmonised class Skin Sens. 1A", StringComparison.Ordinal));
    }

    [Fact]
    [Outside("CLP Art. 4(3): hazards that an entry does not name are the supplier's to classify; 603-235-00-2, linalool, Skin Sens. 1B")]
    public void A_supplier_may_be_stricter_than_the_table_and_may_know_more()
    {
        Substance s = Resolved(TestLaw.Line("Linalool", 2, ["Skin Sens. 1A, H317", "Skin Irrit. 2, H315"], cas: "78-70-6"));
        Assert.Equal(["Skin Irrit. 2", "Skin Sens. 1A"], s.Hazards.Select(h => h.Category.Code).Order());
    }

    [Fact]
    [Outside("CLP Annex VI, 1.1.3.1, note N, and 649-254-00-X, petrolatum: Carc. 1B with note N")]
    public void A_note_lets_a_class_go_only_where_the_sheet_is_declared_to_meet_it()
    {
        Ingredient line = TestLaw.Line("Petrolatum", 30, [], cas: "8009-03-8");
        Substance counted = Resolved(line);
        Assert.Contains(counted.Hazards, h => h.Category.Code == "Carc. 1B");
        Assert.Contains(
            counted.Remarks,
            r => r.Contains("comes with note N", StringComparison.Ordinal) && r.Contains("notesMet: [N]", StringComparison.Ordinal)
        );
        Substance met = Resolved(line with { NotesMet = ["N"] });
        Assert.Empty(met.Hazards);
        Assert.Contains(met.Remarks, r => r.Contains("is left off", StringComparison.Ordinal));
        Assert.Contains(Resolved(line with { NotesMet = ["J"] }).Hazards, h => h.Category.Code == "Carc. 1B");
    }

    [Theory]
    [Outside("CLP Annex VI, Part 3, Table 3: 082-001-00-6 lead compounds; 056-002-00-7 barium salts but barium sulphate")]
    [InlineData("Lead(II) stearate", "lead compounds")]
    [InlineData("Barium stearate", "barium salts")]
    [InlineData("Barium sulphate", null)]
    [InlineData("Leaded nothing", null)]
    public void A_member_of_a_group_without_numbers_is_told(string name, string? group)
    {
        IEnumerable<string> told = Resolved(TestLaw.Line(name, 1, []))
            .Remarks.Where(r => r.Contains("may be one of", StringComparison.Ordinal));
        Assert.Equal(group is null ? 0 : 1, told.Count());
        Assert.All(told, r => Assert.Contains(group!, r, StringComparison.Ordinal));
    }

    [Fact]
    public void A_draft_is_told_and_never_applied()
    {
        Substance s = Resolved(TestLaw.Line("Piperonal", 1, [], cas: "120-57-0"));
        Assert.Empty(s.Hazards);
        Assert.Contains(s.Remarks, r => r.Contains("expected, not law and not applied: Repr. 1B", StringComparison.Ordinal));
    }

    [Fact]
    [Outside("Notices of the Health and Safety Executive: entries up to the 15th ATP were carried over, later ones by own decision only")]
    public void Great_Britain_keeps_the_table_of_the_end_of_2020_and_says_what_is_not_known()
    {
        Edition gb = TestLaw.Lawbook.Edition("gb-clp");
        Substance limonene = Resolved(TestLaw.Line("d-Limonene", 5, ["Aquatic Chronic 3, H412"], cas: "5989-27-5"), gb);
        Assert.Contains(limonene.Hazards, h => h.Category.Code == "Aquatic Chronic 1");
        Substance cinnamal = Resolved(TestLaw.Line("Cinnamal", 0.05, ["Skin Sens. 1B, H317"], cas: "104-55-2"), gb);
        Assert.Equal("Skin Sens. 1A", cinnamal.Hazards.Single().Category.Code);
        Assert.Contains(cinnamal.Remarks, r => r.Contains("due on 2 September 2025", StringComparison.Ordinal));
        Substance benzophenone = Resolved(TestLaw.Line("Benzophenone", 0.05, [], cas: "119-61-9"), gb);
        Assert.Contains(benzophenone.Remarks, r => r.Contains("is not known here", StringComparison.Ordinal));
    }

    [Theory]
    [Outside(
        "CLP Annex VI, Part 3, Table 3: 607-230-00-6 names 2-ethylhexanoic acid, Repr. 2 until the 18th adaptation, Repr. 1B since (its numbers stood there until then); 612-151-00-5 diaminotoluene, as it stood before the 1st"
    )]
    [InlineData("149-57-5", "2023-11-22", "Repr. 2 H361d")]
    [InlineData("149-57-5", "2023-11-23", "Repr. 1B H360D")]
    [InlineData("149-57-5", "2026-11-25", "Repr. 1B H360D")]
    public void A_substance_that_an_entry_names_without_its_number_is_found(string cas, string day, string classes) =>
        Assert.Equal(classes, Classes(On(cas, DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture))));

    [Fact]
    public void An_entry_that_lost_its_numbers_while_it_stands_is_found_by_them()
    {
        string[] lost =
        [
            .. TestLaw
                .Lawbook.Substances.Table!.All()
                .Where(h => h.Versions[^1].Stands && h.Versions[^1].Members.All(m => m.Cas is null && m.Ec is null))
                .Where(h => h.Versions.Any(v => v.Members.Any(m => m.Cas is not null)))
                .Select(h => h.IndexNumber),
        ];
        Assert.Empty(lost);
    }

    [Fact]
    [Outside("CLP Art. 10(1) and 603-107-00-6, 2-(2-methoxyethoxy)ethanol: Repr. 1B H360D from 3 %; Table 3.7.2: 0.3 % otherwise")]
    public void A_limit_of_an_entry_binds_whether_the_sheet_repeats_the_class_or_not()
    {
        foreach (string[] said in new string[][] { [], ["Repr. 1B, H360D"] })
        {
            Assert.DoesNotContain(Classified(said, 2.9), c => c == "Repr. 1B");
            Assert.Contains(Classified(said, 3), c => c == "Repr. 1B");
        }

        Assert.Contains(Classified(["Repr. 1A, H360D"], 0.9), c => c == "Repr. 1A");

        static IEnumerable<string> Classified(string[] said, double percent) =>
            TestLaw
                .Eu.On(TestLaw.Today)
                .Judge(TestLaw.Mixture(TestLaw.Line("2-(2-Methoxyethoxy)ethanol", percent, said, cas: "111-77-3")))
                .Classification.Classes.Select(c => c.Category.Code);
    }

    [Fact]
    [Outside("CLP Annex VI, 022-006-00-2 (14th ATP, until 31 July 2025) and 1.1.3.2, note 10: only mixtures in powder form")]
    public void A_class_of_powders_does_not_count_in_set_wax_or_liquids()
    {
        Ingredient line = TestLaw.Line("Titanium dioxide", 2, [], cas: "13463-67-7");
        foreach (
            (Edition edition, DateOnly day) in new[]
            {
                (TestLaw.Eu, new DateOnly(2023, 1, 1)),
                (TestLaw.Lawbook.Edition("gb-clp"), TestLaw.Today),
            }
        )
        {
            foreach (PhysicalState state in Enum.GetValues<PhysicalState>())
            {
                Verdict verdict = edition.On(day).ForState(state).Judge(TestLaw.Mixture(line));
                Assert.DoesNotContain(verdict.Classification.Classes, c => c.Category.Code == "Carc. 2");
                Assert.Contains(
                    verdict.Substances.SelectMany(s => s.Remarks),
                    r => r.Contains("does not count in this product, by note 10", StringComparison.Ordinal)
                );
            }

            // Of a mixture whose state is not known, the class counts.
            Assert.Contains(
                new SubstanceResolver(edition.Substances, day, edition.Harmonised)
                    .Resolve(TestLaw.Mixture(line))
                    .SelectMany(s => s.Hazards),
                h => h.Category.Code == "Carc. 2"
            );
        }
    }

    [Fact]
    public void A_name_with_another_number_is_told()
    {
        Assert.Contains(
            Resolved(TestLaw.Line("Linalool", 1, [], cas: "5989-27-5")).Remarks,
            r =>
                r.StartsWith("Linalool goes by CAS number 78-70-6", StringComparison.Ordinal)
                && r.Contains("that of d-Limonene", StringComparison.Ordinal)
        );
        foreach (
            (string name, string cas) in new[]
            {
                ("Limonene", "5989-27-5"),
                ("cinnamaldehyde", "104-55-2"),
                ("Carvone", "99-49-0"),
                ("linalool", "78-70-6"),
            }
        )
        {
            Assert.DoesNotContain(
                Resolved(TestLaw.Line(name, 1, [], cas: cas)).Remarks,
                r => r.Contains("goes by CAS number", StringComparison.Ordinal)
            );
        }
    }

    [Theory]
    [Outside("CLP Annex VI, Part 3, Table 3, names of 601-096-00-2, 606-155-00-6, 603-212-00-7")]
    [InlineData("D-LIMONENE", "5989-27-5", "d-Limonene")]
    [InlineData("Zimtaldehyd", "104-55-2", "Cinnamal")]
    [InlineData("HHCB", "1222-05-5", "galaxolide")]
    public void A_listed_substance_is_printed_by_a_name_of_the_law(string printed, string cas, string name) =>
        Assert.Equal(name, Resolved(TestLaw.Line(printed, 1, [], cas: cas)).Name);

    [Fact]
    public void A_pinene_keeps_its_own_name() =>
        Assert.Equal("beta-Pinene", Resolved(TestLaw.Line("beta-Pinene", 1, [], cas: "127-91-3")).Name);

    [Fact]
    [Outside("(EU) 2024/2564 (22nd ATP), 607-772-00-3, hexyl salicylate: Repr. 2, Skin Sens. 1 from 1 May 2026; CLP Tables 3.4.5, 3.7.2")]
    public void An_entry_that_is_to_come_is_the_candles_next_change()
    {
        Verdict before = TestLaw
            .Eu.On(new DateOnly(2026, 4, 1))
            .Judge(TestLaw.Mixture(TestLaw.Line("Hexyl salicylate", 4, [], cas: "6259-76-3")));
        Assert.Empty(before.Classification.Classes);
        LegalChange change = new ChangeFinder(before, new Millilitres(100)).Next().Law!;
        Assert.Equal(new DateOnly(2026, 5, 1), change.On);
        Assert.Contains("classes: none become Skin Sens. 1, Repr. 2", change.What);
        Assert.Contains("22nd ATP", change.Clause.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Names_that_are_English_on_another_language_s_label_are_told()
    {
        Assert.Contains(
            TestLaw.Demo("candles/harbour-bowl.yaml", "DE").Findings,
            f => f.What.Contains("may have others in Deutsch", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(
            TestLaw.Demo("candles/harbour-bowl.yaml", "IE").Findings,
            f => f.What.StartsWith("Names of substances are printed", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_draft_s_lines_are_held_against_the_table()
    {
        Oil oil = TestLaw.Oil(
            "o",
            "Oil",
            TestLaw.Line("Linalool", 10, ["Skin Sens. 1B, H317"], cas: "5989-27-5"),
            TestLaw.Line("Cinnamal", 1, ["Skin Sens. 1B, H317"], cas: "104-55-2")
        );
        string[] told = [.. OilComparison.AgainstTheTable(oil, TestLaw.Eu.On(TestLaw.Today))];
        Assert.Contains(told, t => t.StartsWith("Linalool goes by CAS number", StringComparison.Ordinal));
        Assert.Contains(told, t => t.Contains("Cinnamal: the harmonised class Skin Sens. 1A", StringComparison.Ordinal));
    }
}
