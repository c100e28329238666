using System.Text.Json.Nodes;
using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Files;
using Chandlery.Tests.Support;
using Chandlery.Yaml;
using CsCheck;

namespace Chandlery.Tests.Files;

/// <summary>Candles as a table: what goes out comes back.</summary>
public sealed class CandleTableTests
{
    private static string Csv(params string[] lines) => string.Concat(lines.Select(l => l + "\r\n"));

    private static (IReadOnlyList<(string Id, string Yaml)> Candles, IReadOnlyList<Problem> Problems) Read(string csv)
    {
        var problems = new Problems();
        return (CandleTable.Read(csv, "c.csv", TestLaw.Lawbook, problems), problems.Found);
    }

    /// <summary>A tree as one text, without places and remarks; groups without a field say that they are there.</summary>
    private static string Said(YamlValue value) =>
        value switch
        {
            YamlMap map =>
                $"{{{string.Join(",", map.Entries.OrderBy(e => e.Key, StringComparer.Ordinal).Select(e => $"{e.Key}:{Said(e.Value)}"))}}}",
            YamlList list => $"[{string.Join(",", list.Items.Select(Said))}]",
            YamlScalar scalar => $"<{scalar.Text.Trim()}>",
            _ => "",
        };

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Whatever_a_candle_declares_comes_back_from_its_table(bool commas) =>
        Gen
            .Int.Array[1, 3]
            .Sample(
                seeds =>
                {
                    YamlMap[] maps = [.. seeds.Select(s => new AnyDeclaration(s).Of(CandleShape.Candle))];
                    string csv = CandleTable.Write([.. maps.Select((m, i) => ($"candle-{i}", m))], commas);
                    var problems = new Problems();
                    CsvSheet sheet = CsvReader.Read(csv, "c.csv", problems);
                    string[] heads = [.. sheet.Rows[0].Select(c => c.Text)];
                    Assert.All(heads, h => Assert.True(h == CandleColumns.Id || CandleColumns.Find(h) is not null, h));
                    for (int i = 0; i < maps.Length; i++)
                    {
                        CandleRow row = CandleRow.Write(CandleTable.Cells(heads, sheet.Rows[i + 1]), commas);
                        YamlMap back = YamlText.Read(row.Yaml, "c.yaml", problems)!;
                        Assert.Empty(problems.Found);
                        Assert.Equal(Said(maps[i]), Said(back with { Entries = [.. back.Entries.Where(e => e.Key != "declares")] }));
                    }
                },
                iter: 300
            );

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Every_kind_of_product_of_the_demo_comes_back_as_it_was(bool commas)
    {
        using var maker = new MakersFolder();
        List<Candle> candles = [.. maker.Catalogue.OfKind<Candle>()];
        Assert.Equal(TestLaw.Lawbook.Kinds.Codes.Order(), candles.Select(c => c.Kind?.Id ?? "container-candle").Distinct().Order());
        var problems = new Problems();
        string csv = CandleTable.Candles(candles, commas, problems);
        Assert.Empty(problems.Found);
        (IReadOnlyList<(string Id, string Yaml)> back, IReadOnlyList<Problem> wrong) = Read(csv);
        Assert.Empty(wrong);
        Assert.Equal(candles.Select(c => c.Id), back.Select(b => b.Id));
        string before = AssessmentJson.Write(Assessed(maker.Catalogue));
        foreach ((string id, string yaml) in back)
        {
            maker.Write($"candles/{id}.yaml", yaml);
        }

        Assert.Equal(WithoutPlaces(before), WithoutPlaces(AssessmentJson.Write(Assessed(maker.Catalogue))));
        Assert.Equal(csv, CandleTable.Candles(maker.Catalogue.OfKind<Candle>(), commas, problems));
    }

    private static IEnumerable<Assessment> Assessed(Catalogue catalogue)
    {
        var problems = new Problems();
        var assessor = new Assessor(TestLaw.Lawbook, catalogue, TestLaw.Today);
        return [.. catalogue.OfKind<Candle>().SelectMany(c => assessor.Assess(c, null, problems))];
    }

    // Lines and columns are those of the file, which has other lines now.
    private static string WithoutPlaces(string json)
    {
        JsonNode root = JsonNode.Parse(json)!;
        Clear(root);
        return root.ToJsonString();

        static void Clear(JsonNode? node)
        {
            if (node is JsonObject map)
            {
                map.Remove("place");
                map.Remove("line");
                map.Remove("column");
                map.ToList().ForEach(f => Clear(f.Value));
            }
            else if (node is JsonArray list)
            {
                list.ToList().ForEach(Clear);
            }
        }
    }

    [Fact]
    public void Semicolons_and_decimal_commas_are_understood()
    {
        (IReadOnlyList<(string Id, string Yaml)> candles, IReadOnlyList<Problem> problems) = Read(
            Csv(
                "id;name;use;vessel;netGrams;wax;load.percent;load.of;oils.1.oil;oils.1.share;wicks.count;wicks.trimToMm;soldIn",
                "fig;Fig, late;indoor;tin;180,5;soy;7,5;wax;fig-leaf;100;1;5;IE DE"
            )
        );
        Assert.Empty(problems);
        Assert.Contains("netGrams: 180.5\n", candles[0].Yaml, StringComparison.Ordinal);
        Assert.Contains("percent: 7.5\n", candles[0].Yaml, StringComparison.Ordinal);
        Assert.Contains("name: \"Fig, late\"\n", candles[0].Yaml, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("IE DE", "soldIn: [IE, DE]\n")]
    [InlineData("United Kingdom; DE;", "soldIn: [United Kingdom, DE]\n")]
    [InlineData("United Kingdom;", "soldIn: [United Kingdom]\n")]
    public void Places_stand_in_one_cell_by_code_or_by_name(string cell, string written)
    {
        const string Head = "id,name,use,vessel,netGrams,wax,oils,wicks.count,wicks.trimToMm,soldIn";
        (IReadOnlyList<(string Id, string Yaml)> candles, IReadOnlyList<Problem> problems) = Read(
            Csv(Head, "plain,Plain,indoor,tin,180,soy,empty,1,5," + cell)
        );
        Assert.Empty(problems);
        Assert.Contains(written, candles[0].Yaml, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unscented_candle_and_one_without_a_claim_come_back()
    {
        (IReadOnlyList<(string Id, string Yaml)> candles, IReadOnlyList<Problem> problems) = Read(
            Csv(
                "id,name,use,vessel,netGrams,wax,oils,answers.claims,wicks.count,wicks.trimToMm,soldIn",
                "plain,Plain,indoor,tin,180,soy,empty,empty,1,5,IE"
            )
        );
        Assert.Empty(problems);
        Assert.Contains("oils: []\n", candles[0].Yaml, StringComparison.Ordinal);
        Assert.Contains("claims: []\n", candles[0].Yaml, StringComparison.Ordinal);
    }

    // A row of a whole candle, with one cell after another wrong: the message names the line and the column.
    [Theory]
    [InlineData("netGrams", "a lot", "column 'netGrams': 'netGrams' must be a number")]
    [InlineData("netGrams", "\"7,5\"", "Use a decimal point")]
    [InlineData("use", "under water", "column 'use': 'use: under water' is not known")]
    [InlineData("soldIn", "1E", "column 'soldIn': '1E' is no place of sale")]
    [InlineData("kind", "wax-melts", "Did you mean 'wax-melt'")]
    [InlineData("kind", "wax-melt", "fig: A wax melt has no")]
    [InlineData("load.percent", "", "fig: 'percent' is missing|column 'load.of': 'percent' is missing")]
    [InlineData("oils.1.share", "60", "column 'oils.1.oil': The shares of the oils add up to 60 %")]
    [InlineData("oils", "empty", "'oils' is filled, and 'oils.1.oil' too")]
    [InlineData("id", "../fig", "is no name for a declaration")]
    [InlineData("id", "", "is no name for a declaration")]
    public void A_wrong_cell_is_named_by_line_and_column(string column, string text, string said)
    {
        string[] heads =
        [
            "id",
            "name",
            "kind",
            "use",
            "vessel",
            "netGrams",
            "wax",
            "load.percent",
            "load.of",
            "oils",
            "oils.1.oil",
            "oils.1.share",
            "wicks.count",
            "wicks.trimToMm",
            "soldIn",
        ];
        string[] cells = ["fig", "Fig", "", "indoor", "tin", "180", "soy", "8", "wax", "", "fig-leaf", "100", "1", "5", "IE"];
        Assert.Empty(Read(Csv(string.Join(',', heads), string.Join(',', cells))).Problems);
        cells[Array.IndexOf(heads, column)] = text;
        (IReadOnlyList<(string Id, string Yaml)> candles, IReadOnlyList<Problem> problems) = Read(
            Csv(string.Join(',', heads), string.Join(',', cells))
        );
        Assert.Empty(candles);
        Assert.Contains(problems, p => p.Place.Line == 2 && said.Split('|').Any(s => p.ToString().Contains(s, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("", "no rows")]
    [InlineData("id,name\r\n", "no rows")]
    [InlineData("id,nane\r\nx,y\r\n", "'nane' is no column. Did you mean 'name'?")]
    [InlineData("id,loadPercent\r\nx,8\r\n", "Did you mean 'load.percent'?")]
    [InlineData("name\r\ny\r\n", "'id' is missing")]
    [InlineData("id,name,name\r\nx,y,z\r\n", "stands there twice")]
    [InlineData("id,name\r\nx,y\r\nX,z\r\n", "'X' stands there twice")]
    [InlineData("id,netGrams,wax\r\nx,7,5,soy\r\n", "'soy' stands in no column")]
    [InlineData("id;netGrams;headspaceMm\r\nx;7,5;1.200\r\n", "'1.200' has a point")]
    [InlineData("id\r\n\"open", "not closed")]
    [InlineData("id,oils.0.oil\r\nx,y\r\n", "'oils.0.oil' is no column")]
    [InlineData("id,oils.999999999999.oil\r\nx,y\r\n", "is no column")]
    public void A_broken_table_is_said_with_its_line(string csv, string what)
    {
        (IReadOnlyList<(string Id, string Yaml)> candles, IReadOnlyList<Problem> problems) = Read(csv);
        Assert.Empty(candles);
        Assert.Contains(problems, p => p.ToString().Contains(what, StringComparison.Ordinal) && p.Place.Line > 0);
    }

    [Theory]
    [InlineData("=1+1")]
    [InlineData("'=1+1")]
    [InlineData("@home")]
    [InlineData("-wick")]
    [InlineData("'twas")]
    public void No_spreadsheet_runs_a_name_and_the_name_comes_back(string name)
    {
        string csv = Chandlery.Files.Csv.Write(
            ["id"],
            [
                [name],
            ]
        );
        Assert.DoesNotMatch("\n\"?[=+@-]", csv);
        Assert.Equal(name, CsvReader.Read(csv, "c.csv", new Problems()).Rows[1][0].Text);
    }
}
