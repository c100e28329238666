using System.Globalization;
using System.Reflection;
using Chandlery.Tests.Law.Cases;

namespace Chandlery.Tests.Support;

/// <summary>
/// How many checks there are, by where their expected values come from. A case of the law counts as one, a row of figures
/// beside a test as one, a test without rows as one; a test that goes through a table made by a machine counts as one too,
/// so that the figure is the same wherever it is counted.
/// </summary>
/// <param name="Outside">Checks with a source outside the project.</param>
/// <param name="Memory">Checks whose source is given from memory.</param>
/// <param name="Other">Checks without a source.</param>
internal sealed record CheckCount(int Outside, int Memory, int Other)
{
    private const string MemoryWords = "from memory";

    /// <summary>The cases beside the rows of the law.</summary>
    public static CheckCount OfCases() => Sum(CaseFiles.Cases.Select(c => (c.IsFromMemory ? CheckKind.Memory : CheckKind.Outside, 1)));

    /// <summary>The tests in C# whose namespace is asked for.</summary>
    public static CheckCount OfTests(Func<string, bool> wanted) =>
        Sum(
            typeof(CheckCount)
                .Assembly.GetTypes()
                .Where(t => wanted(t.Namespace ?? ""))
                .SelectMany(t =>
                    t.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
                )
                .Where(m => m.GetCustomAttribute<FactAttribute>() is not null && m.GetCustomAttribute<LawCasesAttribute>() is null)
                .Select(m => (KindOf(m), Math.Max(1, m.GetCustomAttributes<InlineDataAttribute>().Count())))
        );

    /// <summary>Where a test's values come from.</summary>
    public static CheckKind KindOf(MethodInfo test)
    {
        List<OutsideAttribute> sources =
        [
            .. test.GetCustomAttributes<OutsideAttribute>(),
            .. test.DeclaringType!.GetCustomAttributes<OutsideAttribute>(),
        ];
        return sources.Count == 0 ? CheckKind.Other
            : sources.Exists(s => s.Source.Contains(MemoryWords, StringComparison.OrdinalIgnoreCase)) ? CheckKind.Memory
            : CheckKind.Outside;
    }

    /// <summary>Both together.</summary>
    public CheckCount Plus(CheckCount other) => new(Outside + other.Outside, Memory + other.Memory, Other + other.Other);

    /// <summary>The line at the end of a run.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"Checks: {Outside} with an outside source, {Memory} from memory, {Other} others");

    private static CheckCount Sum(IEnumerable<(CheckKind Kind, int Count)> checks)
    {
        ILookup<CheckKind, int> byKind = checks.ToLookup(c => c.Kind, c => c.Count);
        return new CheckCount(byKind[CheckKind.Outside].Sum(), byKind[CheckKind.Memory].Sum(), byKind[CheckKind.Other].Sum());
    }
}
