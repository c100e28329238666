using System.Text.Json;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Cli;

/// <summary><c>chandlery substance</c> as it is typed.</summary>
public sealed class SubstanceCommandTests
{
    private static JsonElement Json(params string[] args)
    {
        (int code, string text, string errors) = Command.Run(["substance", .. args, "--json"]);
        Assert.Equal(("", 0), (errors, code));
        return JsonDocument.Parse(text).RootElement;
    }

    private static string Classes(JsonElement answer) =>
        string.Join(
            "; ",
            answer.GetProperty("classes").EnumerateArray().Select(c => $"{c.GetProperty("class")} {c.GetProperty("statement")}")
        );

    [Theory]
    [Outside("CLP Annex VI, Part 3, Table 3, 606-155-00-6, by (EU) 2024/197 (CELEX 32024R0197) from 1 September 2025")]
    [InlineData("104-55-2")]
    [InlineData("203-213-9")]
    [InlineData("606-155-00-6")]
    [InlineData("Cinnamal")]
    [InlineData("3-phenylprop-2-enal")]
    public void It_is_found_by_any_of_its_numbers_and_names(string query)
    {
        JsonElement answer = Json(query, "--as-of", "2026-11-26");
        Assert.Equal("606-155-00-6", answer.GetProperty("index").GetString());
        Assert.Equal("Skin Sens. 1A H317", Classes(answer));
        Assert.Equal("Skin Sens. 1, H317: C >= 0.01 %", answer.GetProperty("limits")[0].GetString());
        Assert.Equal("2025-09-01", answer.GetProperty("appliesFrom").GetString());
        Assert.Equal("32024R0197", answer.GetProperty("celex").GetString());
        Assert.Equal(["104-55-2", "14371-10-9"], answer.GetProperty("cas").EnumerateArray().Select(c => c.GetString()));
    }

    [Fact]
    [Outside("CLP Annex VI, Part 3, Table 3, 011-002-00-6 (CELEX 32008R1272): sodium hydroxide has a limit of each of four steps")]
    public void Limits_with_two_ends_are_limits()
    {
        IEnumerable<string?> limits = Json("1310-73-2").GetProperty("limits").EnumerateArray().Select(l => l.GetString());
        Assert.Equal(
            [
                "Skin Corr. 1A, H314: C >= 5 %",
                "Skin Corr. 1B, H314: 2 % <= C < 5 %",
                "Skin Irrit. 2, H315: 0.5 % <= C < 2 %",
                "Eye Irrit. 2, H319: 0.5 % <= C < 2 %",
            ],
            limits
        );
    }

    [Fact]
    [Outside("CLP Annex VI, Part 3, Table 3, 605-001-00-5: 1st, 6th and 22nd ATP")]
    public void It_tells_what_was_said_before()
    {
        JsonElement[] before = [.. Json("50-00-0", "--as-of", "2026-11-26").GetProperty("before").EnumerateArray()];
        Assert.Equal(["2015-04-01", "2010-12-01"], before.Select(b => b.GetProperty("appliesFrom").GetString()));
        Assert.Contains("Skin Sens. 1, H317: C >= 0.2 %", before[0].GetProperty("limits").EnumerateArray().Select(l => l.GetString()));
    }

    [Fact]
    [Outside("(EU) 2025/1222 (23rd ATP), applies from 1 February 2027")]
    public void It_tells_what_is_to_come()
    {
        JsonElement answer = Json("2210-79-9", "--as-of", "2026-11-26");
        Assert.Equal("2027-02-01", answer.GetProperty("pending")[0].GetProperty("appliesFrom").GetString());
        JsonElement draft = Json("120-57-0", "--as-of", "2026-11-26").GetProperty("pending")[0];
        Assert.Equal(JsonValueKind.Null, draft.GetProperty("appliesFrom").ValueKind);
        Assert.Contains("not law and not applied", draft.GetProperty("says").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    [Outside("CLP Annex VI, Part 3, Table 3, 082-004-00-2, and Annex VI, 1.2.2 (from memory): ** where the route cannot be told")]
    public void A_route_that_the_table_leaves_open_is_said()
    {
        JsonElement answer = Json("7758-97-6");
        Assert.Contains("STOT RE 2 H373;", Classes(answer) + ";", StringComparison.Ordinal);
        JsonElement[] open = [.. answer.GetProperty("classes").EnumerateArray().Where(c => c.GetProperty("routeOpen").GetBoolean())];
        Assert.Equal("H373", Assert.Single(open).GetProperty("statement").GetString());
        Assert.Contains("no route is named", Command.Run("substance", "7758-97-6").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-12-31", true)]
    [InlineData("2027-01-01", false)]
    [Outside("CLP Annex II, 2.12, consolidated text of 1 May 2026; notice C/2025/6670 (annulled)")]
    public void It_tells_what_a_substance_puts_on_a_label_whatever_its_class(string day, bool due) =>
        Assert.Equal(
            due,
            Json("13463-67-7", "--as-of", day)
                .GetProperty("remarks")
                .EnumerateArray()
                .Any(r => r.GetString()!.Contains("bears EUH212 (CLP Annex II, 2.12)", StringComparison.Ordinal))
        );

    [Fact]
    public void In_Great_Britain_later_acts_are_not_taken_over()
    {
        JsonElement answer = Json("5989-27-5", "--place", "GB", "--as-of", "2026-11-26");
        Assert.Equal("601-029-00-7", answer.GetProperty("index").GetString());
        Assert.Contains(answer.GetProperty("elsewhere").EnumerateArray(), p => p.GetProperty("index").GetString() == "601-096-00-2");
    }

    [Fact]
    [Outside(
        "CLP Annex VI, 606-155-00-6, by (EU) 2024/197 from 1 September 2025: a past day on 26 November 2026, a coming one a year before it"
    )]
    public void A_past_day_of_a_later_act_is_not_to_come()
    {
        (_, string after, _) = Command.Run("substance", "cinnamal", "--place", "GB", "--as-of", "2026-11-26");
        Assert.DoesNotContain("To come", after, StringComparison.Ordinal);
        Assert.Contains("In force in the European Union, not taken over in Great Britain:", after, StringComparison.Ordinal);
        JsonElement before = Json("cinnamal", "--place", "GB", "--as-of", "2024-09-01");
        Assert.Empty(before.GetProperty("elsewhere").EnumerateArray());
        Assert.Equal("2025-09-01", before.GetProperty("pending")[0].GetProperty("appliesFrom").GetString());
    }

    [Theory]
    [InlineData("US", "United States", false)]
    [InlineData("ZA", "South Africa", false)]
    [InlineData("DE", "Germany", true)]
    public void It_says_where_harmonised_classes_do_not_bind(string place, string name, bool bind)
    {
        Assert.Equal(bind, Json("cinnamal", "--place", place, "--as-of", "2026-11-26").GetProperty("binds").GetBoolean());
        (_, string text, _) = Command.Run("substance", "cinnamal", "--place", place, "--as-of", "2026-11-26");
        Assert.Equal(!bind, text.Contains($"they do not bind in {name}", StringComparison.Ordinal));
    }

    [Fact]
    public void It_says_which_counts_where_an_oil_s_sheet_and_the_table_differ()
    {
        using var folder = new MakersFolder();
        folder.Write(
            "oils/harsh.yaml",
            """
            declares: oil
            name: Harsh Bark
            supplier: Ottermole Works
            document: SDS 7
            revised: 2026-05-01
            ingredients:
              - { name: Linalool, cas: 78-70-6, share: "60", classes: ["Skin Sens. 1A, H317"] }
              - { name: Cinnamal, cas: 104-55-2, share: "40", classes: ["Skin Sens. 1B, H317"] }
            """
        );
        string Said(string name) => Command.Run("substance", name, "--in", folder.Path, "--as-of", "2026-11-26").Output;
        Assert.Contains(
            "the supplier's class Skin Sens. 1A (Harsh Bark) is harsher than the harmonised class Skin Sens. 1B",
            Said("linalool"),
            StringComparison.Ordinal
        );
        Assert.Contains("the harmonised class Skin Sens. 1A (CLP Annex VI, 606-155-00-6", Said("cinnamal"), StringComparison.Ordinal);
    }

    [Fact]
    public void It_says_what_of_the_makers_own_holds_it()
    {
        (int code, string text, _) = Command.Run("substance", "d-limonene", "--in", TestLaw.DemoFolder);
        Assert.Equal(0, code);
        Assert.Contains("oil sweet-orange (Sweet Orange Essential Oil): 94 - 96 %", text, StringComparison.Ordinal);
        Assert.Contains("candle harbour-bowl (Harbour Bowl): <= ", text, StringComparison.Ordinal);
        (_, string none, _) = Command.Run("substance", "50-00-0", "--in", TestLaw.DemoFolder);
        Assert.Contains("Nothing of yours holds it.", none, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("limonne", "Did you mean: limonene")]
    [InlineData("5989-27-6", "fails its check digit")]
    [InlineData("999-999-00-9", "has no index number 999-999-00-9")]
    [InlineData("zzzzzzzzzz", "Ask by its CAS number")]
    public void What_is_not_found_is_said_with_a_way_on(string query, string said)
    {
        (int code, string text, string errors) = Command.Run("substance", query);
        Assert.Equal((2, ""), (code, text));
        Assert.Contains(said, errors, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_place_that_is_not_known_is_refused()
    {
        (int code, _, string errors) = Command.Run("substance", "cinnamal", "--place", "GX");
        Assert.Equal(2, code);
        Assert.Contains("'GX' is no place of sale that is known here.", errors, StringComparison.Ordinal);
    }
}
