using Chandlery.Files;
using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Sheets.Wild;
using Chandlery.Yaml;

namespace Chandlery.Tests.Intake;

/// <summary>The ways in which IFRA certificates and allergen statements set their tables, each on the smallest document that shows it.</summary>
public sealed class CertificateTests
{
    private static readonly SheetForm Paper = new(210, 297, 15, 8, 1, false, "", "");

    [Fact]
    public void The_limit_may_stand_before_the_category()
    {
        OilDraft draft = Certificate("en", Table(["Maximum level", "IFRA category"], ["1.2 %", "4"], ["No restriction", "12"]));
        Assert.Equal(["4 1.2", "12 not restricted"], Limits(draft));
    }

    [Fact]
    public void The_limit_may_stand_far_right_of_text_that_wraps()
    {
        string description =
            "Products that stay on the skin and are worn all day long, such as creams, oils and lotions for the whole body";
        OilDraft draft = Certificate(
            "en",
            Table(["IFRA category", "Description", "Maximum level"], ["4", description, "1.2 %"], ["12", "Candles", "No restriction"])
        );
        Assert.Equal(["4 1.2", "12 not restricted"], Limits(draft));
    }

    [Fact]
    public void Categories_of_one_cell_share_its_limit_also_where_their_list_wraps()
    {
        OilDraft draft = Certificate(
            "en",
            Table(["IFRA category", "Maximum level"], ["5A, 5B,\n5C, 5D", "0.62 %"], ["12", "Not permitted"])
        );
        Assert.Equal(["5A 0.62", "5B 0.62", "5C 0.62", "5D 0.62", "12 not permitted"], Limits(draft));
    }

    [Fact]
    public void Categories_may_stand_above_their_limits()
    {
        OilDraft draft = Certificate(
            "en",
            Table(["Category", "1", "2", "3", "12"], ["Maximum level", "0.1 %", "not permitted", "0.35 %", "no restriction"])
        );
        Assert.Equal(["1 0.1", "2 not permitted", "3 0.35", "12 not restricted"], Limits(draft));
    }

    [Theory]
    [InlineData("5 A/B/C/D", "5A 5B 5C 5D")]
    [InlineData("5 A-D", "5A 5B 5C 5D")]
    [InlineData("5A \u2013 5D", "5A 5B 5C 5D")]
    [InlineData("5 (A, B, C, D)", "5A 5B 5C 5D")]
    [InlineData("7 A & B", "7A 7B")]
    [InlineData("10 A+B", "10A 10B")]
    [InlineData("11 A, 11 B", "11A 11B")]
    [InlineData("11A and 11B", "11A 11B")]
    [InlineData("4, 6", "4 6")]
    public void Letters_after_one_number_are_categories_each(string printed, string expected)
    {
        OilDraft draft = Certificate("en", Table(["IFRA category", "Maximum level"], [printed, "0.62 %"], ["12", "unlimited"]));
        Assert.Equal([.. expected.Split(' ').Select(c => c + " 0.62"), "12 not restricted"], Limits(draft));
        Assert.DoesNotContain(draft.Doubts, d => d.Contains("no limit for category", StringComparison.Ordinal));
    }

    [Fact]
    public void A_part_of_a_category_without_a_limit_is_told()
    {
        OilDraft draft = Certificate("en", Table(["IFRA category", "Maximum level"], ["5A", "0.62 %"], ["5C", "0.5 %"], ["7A", "1 %"]));
        Assert.Equal(
            ["5B", "7B"],
            new[] { "5B", "5D", "7B" }.Where(c => draft.Doubts.Any(d => d.Contains($"category {c},", StringComparison.Ordinal)))
        );
    }

    [Fact]
    public void A_category_may_stand_right_behind_its_limit()
    {
        OilDraft draft = Certificate(
            "en",
            new ParagraphBlock(["No restriction 2", "0.35 % 4", "not permitted 5A, 5B", "No restriction 12"])
        );
        Assert.Equal(["2 not restricted", "4 0.35", "5A not permitted", "5B not permitted", "12 not restricted"], Limits(draft));
    }

    [Fact]
    public void A_category_that_a_list_of_most_leaves_out_is_told()
    {
        string[][] rows = [.. new[] { "1", "2", "3", "4", "6", "8", "12" }.Select(c => new[] { c, "1.5 %" })];
        OilDraft draft = Certificate("en", Table(["IFRA category", "Maximum level"], rows));
        Assert.Contains(draft.Doubts, d => d.Contains("category 9,", StringComparison.Ordinal));
    }

    [Fact]
    public void A_statement_is_known_without_its_accents()
    {
        IReadOnlyList<Block> blocks =
        [
            new ParagraphBlock(["Declaration des allergenes", "Nom commercial: Lime Kiln 803", "Date: 20.10.2024"]),
            Table(
                ["Allergene", "N\u00b0 CAS", "%"],
                ["Linalool", "78-70-6", "1,102"],
                ["Citral", "5392-40-5", "0,652"],
                ["Eugenol", "97-53-0", "non present"]
            ),
        ];
        Assert.Equal(["Linalool", "Citral"], Read(blocks).Ingredients.Select(i => i.Name.Value));
    }

    [Fact]
    public void A_narrow_column_may_break_the_words_of_a_limit()
    {
        OilDraft draft = Certificate(
            "de",
            Table(
                ["Kategorie", "1", "2", "7A", "12"],
                ["H\u00f6chstmenge (%)", "0,1 %", "0,35 %", "nicht besc\nhr\u00e4nkt", "nicht\nzul\u00e4ssig"]
            )
        );
        Assert.Equal(["1 0.1", "2 0.35", "7A not restricted", "12 not permitted"], Limits(draft));
    }

    [Fact]
    public void A_category_without_a_limit_is_told()
    {
        OilDraft draft = Certificate("en", Table(["IFRA category", "Maximum level"], ["4", "see annex"], ["12", "No restriction"]));
        Assert.Equal(["12 not restricted"], Limits(draft));
        Assert.Contains(draft.Doubts, d => d.Contains("category 4,", StringComparison.Ordinal));
    }

    // The words are common practice, no source.
    [Theory]
    [InlineData("en", "IFRA 51st Amendment", "No restriction", "Not permitted")]
    [InlineData("en", "Amendment no. 51", "not restricted", "Prohibited")]
    [InlineData("de", "51. Amendment", "keine Beschränkung", "nicht zulässig")]
    [InlineData("fr", "51ème amendement de l'IFRA", "sans restriction", "non autorisé")]
    [InlineData("fr", "Amendement n° 51", "sans restriction", "non autorisé")]
    [InlineData("es", "Enmienda 51", "sin restricción", "no permitido")]
    [InlineData("it", "51° emendamento", "nessuna restrizione", "non consentito")]
    [InlineData("nl", "51e amendement", "geen beperking", "niet toegestaan")]
    [InlineData("pl", "51. poprawka", "bez ograniczeń", "niedozwolone")]
    public void Amendment_and_words_for_limits_are_read_in_each_language(string language, string amendment, string free, string forbidden)
    {
        OilDraft draft = Certificate(language, new ParagraphBlock([amendment]), Table(["IFRA", "%"], ["4", forbidden], ["12", free]));
        Assert.Equal(51, draft.Ifra!.Amendment!.Value);
        Assert.Equal(["4 not permitted", "12 not restricted"], Limits(draft));
        Assert.Equal(new DateOnly(2026, 3, 14), draft.Ifra.Date!.Value);
    }

    [Fact]
    public void Percent_counts_where_parts_per_million_stand_beside_it()
    {
        OilDraft draft = Statement(
            Table(
                ["Allergen", "CAS No.", "%", "ppm"],
                ["Linalool", "78-70-6", "0.25", "2500"],
                ["Citral", "5392-40-5", "not present", "not present"]
            )
        );
        Assert.Equal(["78-70-6 0.25 %"], draft.Ingredients.Select(i => $"{i.Cas!.Value} {i.Share!.Value}"));
    }

    [Fact]
    public void Panels_side_by_side_are_read_one_after_the_other()
    {
        OilDraft draft = Statement(
            Table(
                ["Allergen", "CAS No.", "%", "Allergen", "CAS No.", "%"],
                ["Linalool", "78-70-6", "0.25", "Citral", "5392-40-5", "0.1"],
                ["Geraniol", "106-24-1", "0.05", "Eugenol", "97-53-0", "absent"]
            )
        );
        Assert.Equal(
            ["106-24-1 0.05 %", "5392-40-5 0.1 %", "78-70-6 0.25 %"],
            draft.Ingredients.Select(i => $"{i.Cas!.Value} {i.Share!.Value}").Order(StringComparer.Ordinal)
        );
    }

    // Extracts have a CAS number for each way in which they are had; which one the supplier means is not known.
    [Fact]
    public void A_natural_extract_with_several_numbers_is_read_and_doubted()
    {
        OilDraft draft = Statement(
            Table(
                ["Allergen", "CAS No.", "%"],
                ["Lavandula oil / extract", "91722-69-9\n8000-28-0", "0.4"],
                ["Evernia prunastri extract", "90028-68-5", "not detected"],
                ["Linalool", "78-70-6", "0.25"]
            )
        );
        Assert.Equal(["Lavandula oil / extract", "Linalool"], draft.Ingredients.Select(i => i.Name.Value));
        Assert.Contains(draft.Ingredients[0].Cas!.Doubts, d => d.Contains("several", StringComparison.Ordinal));
        Assert.Equal("0.4 %", draft.Ingredients[0].Share!.Value);
    }

    private static IEnumerable<string> Limits(OilDraft draft) => draft.Ifra!.Limits.Select(l => $"{l.Category} {l.Limit.Value}");

    private static OilDraft Certificate(string language, params Block[] blocks)
    {
        var words = new WildWords(language, ShippedFiles.Data(null, new Problems()));
        string[] head = [words.First("ifra"), $"{words.First("name")}: Night Fig", $"{words.First("date")}: 14.03.2026"];
        return Read([new ParagraphBlock(head), .. blocks]);
    }

    private static OilDraft Statement(params Block[] blocks) =>
        Read([new ParagraphBlock(["Allergen statement", "Product name: Night Fig", "Date: 2026-03-14"]), .. blocks]);

    private static TableBlock Table(string[] head, params string[][] rows) =>
        new(
            [
                [.. head.Select(TableCell.Of)],
            ],
            [.. rows.Select(r => (IReadOnlyList<TableCell>)[.. r.Select(TableCell.Of)])],
            [.. head.Select(_ => 20.0)],
            TableRules.Head,
            false,
            true
        );

    private static OilDraft Read(IReadOnlyList<Block> blocks)
    {
        var truth = new WildTruth("", null, null, null, null, null, [], null, null, []);
        byte[] pdf = Press.Print(new WildSheet(0, "ifra", "", "en", Paper, blocks, truth));
        return TestDrafts.Of(new SupplierPdf("sheet.pdf", pdf, PdfWords.Parse(pdf).Value));
    }
}
