using System.Reflection;
using System.Runtime.CompilerServices;
using Chandlery.Core.Declared;

namespace Chandlery.Tests.Architecture;

/// <summary>
/// Beyond seven parameters in a row, one text is easily put where another belongs: such facts are records with named,
/// required properties.
/// </summary>
public sealed class ParameterCountTests
{
    private const int Most = 7;

    // JSON reports, whose order is their form; texts of safety data sheets and what holds them, not done yet.
    private static readonly string[] Excepted =
    [
        "AssessmentReport",
        "IncidentReportLine",
        "Language",
        "Lawbook",
        "LimitReport",
        "ListingReport",
        "RecalledBatchReport",
        "SafetySheet",
        "SafetySheetRules",
        "SheetSentence",
        "TransportRules",
        "WorkingReport",
    ];

    [Fact]
    public void No_constructor_takes_more_than_seven_parameters()
    {
        List<string> found =
        [
            .. typeof(Candle)
                .Assembly.GetTypes()
                .Where(t => t.GetCustomAttribute<CompilerGeneratedAttribute>() is null && TakesTooMany(t))
                .Select(t => t.Name)
                .Order(StringComparer.Ordinal),
        ];
        Assert.Equal(Excepted, found);
    }

    [Fact]
    public void The_search_counts_parameters()
    {
        Assert.True(TakesTooMany(typeof(EightInARow)));
        Assert.False(TakesTooMany(typeof(Candle)));
    }

    private static bool TakesTooMany(Type type) =>
        type.GetConstructors(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)
            .Any(c => c.GetParameters().Length > Most);

    private sealed record EightInARow(int A, int B, int C, int D, int E, int F, int G, int H);
}
