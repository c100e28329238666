using System.Text.RegularExpressions;

namespace Chandlery.Tests.Architecture;

/// <summary>
/// No threshold of any law is a figure in the program: in the rooms that apply law, nothing is compared with a figure, no
/// quantity is made of one, and no constant holds one, but those named here.
/// </summary>
public sealed partial class ThresholdsInDataTests
{
    private static readonly string[] Rooms =
    [
        "Law/",
        "Classified/",
        "Labelled/",
        "Judged/",
        "Notified/",
        "Assessed/",
        "Asked/",
        "SafetyDataSheets/",
        "SafetyFiles/",
    ];

    // Bounds of what a field may hold at all, wide of any law; the arithmetic of a published algorithm.
    private static readonly string[] Elsewhere = ["Law/Reading/", "Notified/Ufi"];

    // Nothing, one, two of something, the whole.
    private static readonly string[] Neutral = ["0", "1", "2", "100"];

    // Figures that are no law's, each where it is named and explained.
    private static readonly string[] Ours =
    [
        "Asked/Ceilings/CeilingFinder.cs 1e-7", // just under and just over a ceiling
        "Asked/Substances/SubstanceSearch.cs 8", // how many names are suggested at most
        "Asked/Trials/BlendSearch.cs 1e-6", // rounding
        "Asked/Trials/TrialAims.cs 1000", // grams to the kilogram
        "Asked/Trials/TrialSolver.cs 5", // how many oils are left out in every combination
        "Asked/Trials/TrialSolver.cs 6", // how many answers are looked at more closely
        "Assessed/Tracer.cs 3", // the shortest question that is looked for in names
        "Classified/MixtureIndex.cs 512", // what fits on the stack
        "Classified/OpenQuestions.cs 0.1", // below it another method is not worth a reader's time
        "Law/QuantityFigures.cs 10", // millimetres to the centimetre
        "Law/QuantityFigures.cs 25.4", // millimetres to the inch
        "Law/WordBreaks.cs 3", // letters that a broken word keeps on either side
        "SafetyDataSheets/SheetContext.cs 4", // the length of a code without letters
        "Assessed/WeighingVerdict.cs 1e-6", // the computer's own rounding of grams
    ];

    [Fact]
    public void No_threshold_is_a_figure_in_the_source()
    {
        List<(string Figure, string Where)> found =
        [
            .. from file in SourceFiles.All
            where file.Path.StartsWith("Chandlery.Core/", StringComparison.Ordinal)
            let path = file.Path["Chandlery.Core/".Length..]
            where Rooms.Any(r => path.StartsWith(r, StringComparison.Ordinal))
            where !Elsewhere.Any(e => path.StartsWith(e, StringComparison.Ordinal))
            from line in SourceFiles.Code(file.Text)
            from match in Threshold().Matches(Literal().Replace(line.Text, "\"\""))
            let figure = match.Groups["figure"].Value
            where !Neutral.Contains(figure)
            select ($"{path} {figure}", $"{path}:{line.Line}: {line.Text.Trim()}"),
        ];
        string[] strange = [.. found.Where(f => !Ours.Contains(f.Figure)).Select(f => f.Where)];
        Assert.True(strange.Length == 0, string.Join('\n', strange));
        Assert.Equal([], Ours.Where(o => found.TrueForAll(f => f.Figure != o)));
    }

    [Theory]
    [InlineData("if (share > 0.1)", "0.1")]
    [InlineData("new MassPercent(0.3)", "0.3")]
    [InlineData("private const double Limit = 25;", "25")]
    [InlineData("share.Value >= limit", "")]
    [InlineData("new SheetTable([30, 70], rows)", "")]
    public void The_search_tells_thresholds_from_other_figures(string code, string figure) =>
        Assert.Equal(figure, Threshold().Match(code).Groups["figure"].Value);

    [GeneratedRegex("\"(?:[^\"\\\\]|\\\\.)*\"")]
    private static partial Regex Literal();

    [GeneratedRegex(
        @"(?:[<>]=? ?|new (?:MassPercent|Grams|Millilitres|Millimetres|Celsius)\(|\bconst (?:double|int) \w+ = )-?(?<figure>[0-9]+(?:\.[0-9]+)?(?:e-?[0-9]+)?)(?![A-Za-z0-9_])"
    )]
    private static partial Regex Threshold();
}
