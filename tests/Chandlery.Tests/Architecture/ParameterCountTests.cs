using System.CodeDom.Compiler;
using System.Reflection;
using System.Runtime.CompilerServices;
using Chandlery.Core.Declared;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Architecture;

/// <summary>
/// Beyond seven parameters in a row, one text is easily put where another belongs: such facts are records with named,
/// required properties.
/// </summary>
public sealed class ParameterCountTests
{
    private const int Most = 7;

    private const BindingFlags Own =
        BindingFlags.DeclaredOnly | BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic;

    // A folder of the source is named like its assembly, but for the case of letters.
    private static readonly IReadOnlyList<Assembly> Assemblies =
    [
        .. Directory
            .EnumerateFiles(Path.Combine(TestLaw.Repository, "src"), "*.csproj", SearchOption.AllDirectories)
            .Select(p => Path.GetFileNameWithoutExtension(p))
            .Select(name => Assembly.Load(name == "Chandlery.Cli" ? "chandlery" : name)),
    ];

    [Fact]
    public void Nothing_takes_more_than_seven_parameters()
    {
        string[] found = [.. Assemblies.SelectMany(a => a.GetTypes()).SelectMany(TooLong).Order(StringComparer.Ordinal)];
        Assert.True(found.Length == 0, string.Join('\n', found));
    }

    [Fact]
    public void Every_project_of_the_source_is_searched()
    {
        Assert.Contains(typeof(Candle).Assembly, Assemblies);
        Assert.Equal(8, Assemblies.Distinct().Count());
    }

    [Fact]
    public void The_search_counts_parameters()
    {
        Assert.Equal([".ctor", "Eight"], TooLong(typeof(EightInARow)).Select(f => f.Split(' ')[1]).Order(StringComparer.Ordinal));
        Assert.Empty(TooLong(typeof(Candle)));
    }

    // What the compiler or a generator writes is read by nobody, and what another library declares has its parameters from there.
    private static IEnumerable<string> TooLong(Type type) =>
        IsGenerated(type)
            ? []
            : type.GetConstructors(Own)
                .Concat<MethodBase>(type.GetMethods(Own))
                .Where(m => m.GetParameters().Length > Most && !IsGenerated(m) && !IsForeign(m))
                .Select(m => $"{type.FullName} {m.Name} {m.GetParameters().Length}");

    private static bool IsGenerated(MemberInfo member) =>
        member.IsDefined(typeof(CompilerGeneratedAttribute))
        || member.IsDefined(typeof(GeneratedCodeAttribute))
        || (member.DeclaringType is { } outer && IsGenerated(outer));

    private static bool IsForeign(MethodBase method) =>
        method is MethodInfo own && own.GetBaseDefinition().DeclaringType!.Assembly != method.DeclaringType!.Assembly;

    private sealed record EightInARow(int A, int B, int C, int D, int E, int F, int G, int H)
    {
        private static int Eight(int a, int b, int c, int d, int e, int f, int g, int h) => a + b + c + d + e + f + g + h;

        public int Sum => Eight(A, B, C, D, E, F, G, H);
    }
}
