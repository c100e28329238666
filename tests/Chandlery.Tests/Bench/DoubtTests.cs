using System.Text.RegularExpressions;
using Chandlery.Core.Assessed;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Bench;

/// <summary>What could be a slip of the pen is asked back; each of these passed in silence before.</summary>
public sealed class DoubtTests : IDisposable
{
    private readonly MakersFolder folder = new();

    public void Dispose() => folder.Dispose();

    public static TheoryData<string, string, string, string, string> Slips =>
        new()
        {
            { "candles/slate-jar.yaml", "percent: 6, of: candle", "percent: 0.06, of: candle", "load", "as a fraction it would be 6" },
            { "candles/fig-tin.yaml", "drops: 160", "drops: 16", "load", "hardly to be smelt" },
            { "candles/harbour-bowl.yaml", "netGrams: 2900", "netGrams: 290", "netGrams", "holds 4200 ml" },
            { "candles/harbour-bowl.yaml", "netGrams: 2900", "netGrams: 2.900", "netGrams", "with a thousands mark it would be 2900" },
            { "candles/fig-tin.yaml", "drops: 160", "drops: 1.600", "drops", "with a thousands mark it would be 1600" },
            { "candles/slate-jar.yaml", "meltCelsius: 75", "meltCelsius: 167", "temperatures", "167 °F would be 75 °C" },
            { "oils/rain-on-slate.yaml", "celsius: 104", "celsius: 219", "flashPoint", "219 °F would be 104 °C" },
            { "oils/rain-on-slate.yaml", "share: 5 %", "share: 0.05", "share", "as a fraction 5 %" },
            { "oils/rain-on-slate.yaml", "highestLoad: { percent: 10,", "highestLoad: { percent: 0.1,", "highestLoad", "would be 10 %" },
            { "waxes/soy-flake.yaml", "meltingCelsius: 52", "meltingCelsius: 126", "meltingCelsius", "126 °F would be 52 °C" },
            { "vessels/jar-300.yaml", "brimfulMl: 330", "brimfulMl: 3300", "brimfulMl", "measure it with water" },
            { "candles/dune-reeds.yaml", "percent: 20, of: product", "percent: 0.2, of: product", "load", "% of the base" },
            { "candles/dune-reeds.yaml", "netMillilitres: 100", "netMillilitres: 10", "netMillilitres", "10 ml are declared" },
            { "maker.yaml", "telephone: +999 20 555 014", "telephone: +999 20", "telephone", "has 5 digits" },
            { "batches/hb-2611.yaml", "waxGrams: 7100", "waxGrams: 7.100", "waxGrams", "it would be 7100" },
        };

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_slip_is_asked_back_and_stops_until_it_is_mended_or_confirmed(
        string file,
        string right,
        string slip,
        string field,
        string asks
    )
    {
        string id = file switch
        {
            "batches/hb-2611.yaml" => "hb-2611",
            _ when file.StartsWith("candles/", StringComparison.Ordinal) => Path.GetFileNameWithoutExtension(file),
            _ => "slate-jar",
        };
        Assert.DoesNotContain(Asked(id), f => f.What.Contains("confirmed:", StringComparison.Ordinal));

        folder.Change(file, right, slip);
        Finding asked = Assert.Single(
            Asked(id),
            f => f.What.Contains($"'confirmed: [{field}]'", StringComparison.Ordinal) && f.What.Contains(asks, StringComparison.Ordinal)
        );
        Assert.Equal(Gravity.Stop, asked.Gravity);
        Assert.Contains(Path.GetFileName(file), asked.What, StringComparison.Ordinal);

        string[] fields =
        [
            .. Asked(id).SelectMany(f => Regex.Matches(f.What, @"'confirmed: \[(\w+)\]'").Select(m => m.Groups[1].Value)).Distinct(),
        ];
        folder.Write(
            file,
            folder.Read(file) + $"confirmed: [{string.Join(", ", fields.Where(f => f == field || f is "load" or "netGrams"))}]\n"
        );
        Assert.DoesNotContain(Asked(id), f => f.What.Contains($"'confirmed: [{field}]'", StringComparison.Ordinal));
    }

    [Fact]
    public void No_label_is_printed_while_something_is_asked_back()
    {
        folder.Change("candles/slate-jar.yaml", "percent: 6, of: candle", "percent: 0.06, of: candle");
        string into = Path.Combine(folder.Path, "out");
        string jar = Path.Combine(folder.Path, "candles", "slate-jar.yaml");
        Assert.Equal(1, Command.Run("label", jar, "--out", into).Code);
        Assert.False(Directory.Exists(into));
        folder.Write("candles/slate-jar.yaml", folder.Read("candles/slate-jar.yaml") + "confirmed: [load]\n");
        Assert.Equal(0, Command.Run("label", jar, "--out", into).Code);
    }

    [Fact]
    public void What_is_confirmed_must_be_something_that_is_asked()
    {
        folder.Write("candles/slate-jar.yaml", folder.Read("candles/slate-jar.yaml") + "confirmed: [laod]\n");
        (int code, _, string errors) = Command.Run("assess", Path.Combine(folder.Path, "candles", "slate-jar.yaml"));
        Assert.Equal(2, code);
        Assert.Contains("'laod' is not known in 'confirmed'", errors, StringComparison.Ordinal);
    }

    private IReadOnlyList<Finding> Asked(string id) => folder.Assess(id, "IE").Findings;
}
