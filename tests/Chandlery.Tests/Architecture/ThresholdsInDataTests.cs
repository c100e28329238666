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
        "Composed/",
        "Declared/",
        "Hazards/",
        "Limits/",
        "Making/",
        "Quantities/",
    ];

    // Bounds of what a field may hold at all, wide of any law; the arithmetic of a published algorithm and of a search for places.
    private static readonly string[] Elsewhere = ["Law/Reading/", "Declared/Reading/", "Notified/Ufi", "Making/Layouts/"];

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
        "Assessed/Assessor.cs 6", // how many candles of one number are named
        "Assessed/Tracer.cs 3", // the shortest question that is looked for in names
        "Classified/MixtureIndex.cs 512", // what fits on the stack
        "Classified/OpenQuestions.cs 0.1", // below it another method is not worth a reader's time
        "Composed/Composition.cs 0.005", // what a sheet's own rounding leaves
        "Composed/RecipeMaker.cs 8", // how deep waxes are blended of waxes
        "Declared/EcNumber.cs 6", // digits before the check digit
        "Declared/FormulationNumber.cs 28", // bits of a number in a UFI
        "Declared/Gtin13.cs 13", // digits
        "Judged/JudgedRecipes.cs 256", // how many recipes are kept
        "Law/QuantityFigures.cs 10", // millimetres to the centimetre
        "Law/QuantityFigures.cs 25.4", // millimetres to the inch
        "Law/WordBreaks.cs 3", // letters that a broken word keeps on either side
        "Limits/Doubts.cs 0.4", // a vessel that is hardly filled
        "Limits/Doubts.cs 1.1", // more than a vessel holds
        "Limits/Doubts.cs 0.9", // what a millilitre of wax weighs
        "Limits/Doubts.cs 105", // hotter than waxes are worked
        "Limits/Doubts.cs 90", // waxes melt below
        "Limits/Doubts.cs 130", // oils flash below, as a rule
        "Limits/Doubts.cs 0.5", // half of what its sides give
        "Limits/Doubts.cs 1.5", // more than its sides give
        "Limits/Doubts.cs 7", // digits of a telephone number, at least
        "Limits/Doubts.cs 15", // and at most
        "Making/MeltParts.cs 1e-5", // the computer's own rounding
        "Making/PouringPlan.cs 50", // percent of waste that nobody means
        "Making/PouringPlan.cs 1000", // grams from which no decimal is read
        "Making/Stores/CandleCost.cs 60", // minutes in an hour
        "Making/Stores/Storeroom.cs 60", // days that are soon
        "Making/WickPlan.cs 30", // millimetres between wicks, common practice
        "Making/WickPlan.cs 40",
        "Making/WickPlan.cs 1e-4", // the computer's own rounding
        "Quantities/FigureFormat.cs 3", // figures of a share that are printed
        "Quantities/FigureFormat.cs 12",
        "Quantities/FigureFormat.cs 28.349523125", // grams to the ounce
        "Quantities/MassPercent.cs 1e-9", // the computer's own rounding
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

    // Papers and drawings are full of figures of design; one that a law gives says so above it.
    [Fact]
    public void No_figure_anywhere_stands_under_a_clause()
    {
        Assert.True(IsUnderAClause("// A fifteenth (CLP Annex I, 1.2.1.2).", "private const double Share = 1.0 / 15;"));
        Assert.False(IsUnderAClause("// Wide enough to be read.", "private const double Share = 1.0 / 15;"));
        Assert.Equal(
            [],
            from file in SourceFiles.All
            let lines = file.Text.Split('\n')
            from at in Enumerable.Range(1, lines.Length - 1)
            where IsUnderAClause(lines[at - 1].Trim(), lines[at].Trim())
            select $"{file.Path}:{at + 1}: {lines[at].Trim()}"
        );
    }

    private static bool IsUnderAClause(string above, string line) =>
        above.StartsWith("//", StringComparison.Ordinal) && Clause().IsMatch(above) && Figure().IsMatch(line);

    [Theory]
    [InlineData("if (share > 0.1)", "0.1")]
    [InlineData("new MassPercent(0.3)", "0.3")]
    [InlineData("private const double Limit = 25;", "25")]
    [InlineData("share.Value >= limit", "")]
    [InlineData("new SheetTable([30, 70], rows)", "")]
    public void The_search_tells_thresholds_from_other_figures(string code, string figure) =>
        Assert.Equal(figure, Threshold().Match(code).Groups["figure"].Value);

    [GeneratedRegex(@"\b(?:CLP|REACH|Annex [IVX]+|Art\. ?[0-9]|[0-9]+ CFR|Regulation \(E[CU]\))")]
    private static partial Regex Clause();

    [GeneratedRegex(@"^(?:\w+ )*(?:const|static readonly) \w[\w<>\[\]]* \w+ = [^""]*[0-9]")]
    private static partial Regex Figure();

    [GeneratedRegex("\"(?:[^\"\\\\]|\\\\.)*\"")]
    private static partial Regex Literal();

    [GeneratedRegex(
        @"(?:[<>]=? ?|new (?:MassPercent|Grams|Millilitres|Millimetres|Celsius)\(|\bconst (?:double|int) \w+ = )-?(?<figure>[0-9]+(?:\.[0-9]+)?(?:e-?[0-9]+)?)(?![A-Za-z0-9_])"
    )]
    private static partial Regex Threshold();
}
