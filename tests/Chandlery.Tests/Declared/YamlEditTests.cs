using Chandlery.Core.Asked.Comparisons;
using Chandlery.Yaml;

namespace Chandlery.Tests.Declared;

public sealed class YamlEditTests
{
    private const string Text = """
        # a candle
        declares: candle # kind
        load: { percent: 8, of: wax }  # as agreed
        oils:
          - { oil: a, share: 30 } # the first

          # about b
          - { oil: b, share: 70 }
        soldIn: [IE, DE] # places
        wicks:
          count: 1 # one
          trimToMm: 5
        """;

    [Fact]
    public void A_value_changes_and_nothing_else()
    {
        string text = YamlEdit.Set(Text, ["load", "percent"], "6.5");
        Assert.Equal(Text.Replace("percent: 8", "percent: 6.5", StringComparison.Ordinal), text);
        Assert.Equal(Text.Replace("count: 1 ", "count: 3 ", StringComparison.Ordinal), YamlEdit.Set(Text, ["wicks", "count"], "3"));
        Assert.Equal(Text.Replace("share: 70", "share: 65", StringComparison.Ordinal), YamlEdit.Set(Text, ["oils", 1, "share"], "65"));
    }

    [Fact]
    public void A_field_is_added_where_its_map_ends()
    {
        Assert.Contains("of: wax, note: x }  # as agreed", YamlEdit.Set(Text, ["load", "note"], "x"), StringComparison.Ordinal);
        Assert.EndsWith("  trimToMm: 5\n  kind: cotton\n", YamlEdit.Set(Text, ["wicks", "kind"], "cotton"), StringComparison.Ordinal);
        Assert.EndsWith("  trimToMm: 5\nnetGrams: 80\n", YamlEdit.Set(Text, ["netGrams"], "80"), StringComparison.Ordinal);
    }

    [Fact]
    public void Items_come_and_go_with_their_lines()
    {
        string more = YamlEdit.Add(Text, ["oils"], "{ oil: c, share: 5 }");
        Assert.Contains("  - { oil: b, share: 70 }\n  - { oil: c, share: 5 }\nsoldIn", more, StringComparison.Ordinal);
        Assert.Equal(Text, YamlEdit.Remove(more, ["oils", 2]));
        Assert.DoesNotContain("the first", YamlEdit.Remove(Text, ["oils", 0]), StringComparison.Ordinal);
        Assert.Contains("# about b", YamlEdit.Remove(Text, ["oils", 0]), StringComparison.Ordinal);
        Assert.Contains("[IE, DE, FR]", YamlEdit.Add(Text, ["soldIn"], "FR"), StringComparison.Ordinal);
        Assert.Contains("[DE]", YamlEdit.Remove(Text, ["soldIn", 0]), StringComparison.Ordinal);
        Assert.Contains("[IE]", YamlEdit.Remove(Text, ["soldIn", 1]), StringComparison.Ordinal);
    }

    [Fact]
    public void A_field_gets_another_name() =>
        Assert.Contains("{ oil: a, grams: 30 }", YamlEdit.Rename(Text, ["oils", 0, "share"], "grams"), StringComparison.Ordinal);

    [Theory]
    [InlineData("Fig Tin", "Fig Tin")]
    [InlineData("no", "\"no\"")]
    [InlineData("a: b", "\"a: b\"")]
    [InlineData("# x", "\"# x\"")]
    [InlineData("say \"hi\"", "\"say \\\"hi\\\"\"")]
    [InlineData("12.5", "12.5")]
    [InlineData("", "\"\"")]
    [InlineData("a\u2028b\ufeff\u0007", "\"a\\u2028b\\ufeff\\u0007\"")]
    [InlineData("wax \ud83d\udd6f", "\"wax \ud83d\udd6f\"")]
    public void Texts_are_quoted_where_yaml_would_misread_them(string value, string written) =>
        Assert.Equal(written, YamlEdit.Scalar(value));

    [Fact]
    public void Half_a_character_is_replaced() => Assert.Equal("\"half \ufffd\"", YamlEdit.Quoted("half " + '\ud83d'));

    [Theory]
    [InlineData("oils: [")]
    [InlineData("a: 1")]
    public void What_is_not_there_is_said(string text) => Assert.Throws<FormatException>(() => YamlEdit.Add(text, ["oils"], "x"));

    [Theory]
    [InlineData("a: 1\n", "b", "b: 2\n", "2")]
    [InlineData("a: 1\n", "g.b", "g: { b: 2 }\n", "2")]
    [InlineData("g: { a: 1 }\n", "g.b", "g: { a: 1, b: 2 }\n", "2")]
    [InlineData("g:\n  a: 1\n", "g.b.c", "  b: { c: 2 }\n", "2")]
    [InlineData("l: [x]\n", "l.1", "l: [x, 2]\n", "2")]
    [InlineData("l:\n  - x # first\n", "l.1", "  - x # first\n  - 2\n", "2")]
    [InlineData("a: 1\n", "l.0.b", "l: [{ b: 2 }]\n", "2")]
    [InlineData("l:\n- x\n- y\nz: 1\n", "l", "l: [2]\nz: 1\n", "[2]")]
    [InlineData("g:\n  a: 1\n  b: 2\nz: 1\n", "g", "g: none\nz: 1\n", "none")]
    [InlineData("a:\nz: 1\n", "a", "a: 2\n", "2")]
    [InlineData("g: { a: 1, b: 2 } # why\nz: 1\n", "g", "g: { c: 3 } # why\nz: 1\n", "{ c: 3 }")]
    [InlineData("l: [{ a: 1 }, { a: 2 }]\nz: 1\n", "l", "l: [3]\nz: 1\n", "[3]")]
    [InlineData("l: [{ a: 1 }]\nz: 1\n", "l.1", "l: [{ a: 1 }, { a: 2 }]\nz: 1\n", "{ a: 2 }")]
    [InlineData("l: [\n  x, # }\n]\nz: 1\n", "l", "l: [3]\nz: 1\n", "[3]")]
    [InlineData("g: {}\n", "g.a", "g: { a: 2 }", "2")]
    public void What_is_put_stands_where_the_path_leads_whatever_was_there(string text, string path, string expected, string written)
    {
        object[] steps = [.. path.Split('.').Select(s => int.TryParse(s, out int at) ? at : (object)s)];
        string put = YamlEdit.Put(text, steps, written);
        Assert.Contains(expected, put, StringComparison.Ordinal);
        Assert.NotNull(YamlText.Read(put, "f", new Problems()));
    }

    [Fact]
    public void The_last_of_a_block_takes_the_block_with_it() =>
        Assert.Equal("a: 1\nz: 2\n", YamlEdit.Remove("a: 1\nl:\n  - only\nz: 2\n", ["l", 0]));
}
