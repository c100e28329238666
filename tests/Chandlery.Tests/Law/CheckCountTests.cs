using System.Reflection;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>How much of what is checked stands on a text outside the project, and how much on memory.</summary>
public sealed class CheckCountTests
{
    private static readonly string[] LawNamespaces = ["Chandlery.Tests.Law", "Chandlery.Tests.SecondCalculation"];

    private static bool IsOfLaw(string space) =>
        LawNamespaces.Any(law => space == law || space.StartsWith(law + ".", StringComparison.Ordinal));

    [Fact]
    public void The_contributors_guide_gives_the_count()
    {
        CheckCount cases = CheckCount.OfCases();
        CheckCount law = CheckCount.OfTests(IsOfLaw);
        CheckCount rest = CheckCount.OfTests(space => !IsOfLaw(space));
        CheckCount all = cases.Plus(law).Plus(rest);

        // run.sh prints it: what a test writes itself is not shown.
        File.WriteAllText(Path.Combine(AppContext.BaseDirectory, "checks.txt"), $"{all}\n");
        string table = string.Join(
            "\n",
            "| checks | with an outside source | from memory | others |",
            "|---|---|---|---|",
            Row("cases beside the law's rows", cases),
            Row("other tests of the law", law),
            Row("all other tests", rest),
            Row("together", all)
        );
        string guide = File.ReadAllText(Path.Combine(TestLaw.Repository, "DEVELOPERS.md"));
        Assert.True(guide.Contains(table, StringComparison.Ordinal), $"DEVELOPERS.md has other figures. Put this there:\n{table}");
    }

    [Theory]
    [InlineData(nameof(Marked), nameof(CheckKind.Outside))]
    [InlineData(nameof(Remembered), nameof(CheckKind.Memory))]
    [InlineData(nameof(Unmarked), nameof(CheckKind.Other))]
    public void What_is_from_memory_is_told_apart(string method, string kind) =>
        Assert.Equal(
            kind,
            CheckCount.KindOf(typeof(CheckCountTests).GetMethod(method, BindingFlags.Static | BindingFlags.NonPublic)!).ToString()
        );

    [Outside("a document, a clause")]
    private static void Marked() { }

    [Outside("a document, a clause (From memory)")]
    private static void Remembered() { }

    private static void Unmarked() { }

    private static string Row(string name, CheckCount count) => $"| {name} | {count.Outside} | {count.Memory} | {count.Other} |";
}
