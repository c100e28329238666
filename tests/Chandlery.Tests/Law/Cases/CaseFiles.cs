using Chandlery.Core.Law.Reading;
using Chandlery.Paper.Papers;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Cases;

/// <summary>The cases beside the rows of the law: <c>data/law/&lt;edition&gt;/cases.yaml</c>.</summary>
internal static class CaseFiles
{
    private static readonly Lazy<(IReadOnlyList<LawCase> Cases, Problems Problems)> Shared = new(ReadAll);

    /// <summary>All cases, edition by edition.</summary>
    public static IReadOnlyList<LawCase> Cases => Shared.Value.Cases;

    /// <summary>What is wrong with the files.</summary>
    public static Problems Problems => Shared.Value.Problems;

    /// <summary>A reader that knows the shipped codes.</summary>
    public static CaseReader Reader { get; } =
        new(
            new LawCodes(
                TestLaw.Lawbook.Vocabulary,
                [.. TestLaw.Lawbook.FindLanguage("en")!.Official.Keys.Select(k => k.Text)],
                PaperList.Own.Ids
            )
        );

    private static (IReadOnlyList<LawCase>, Problems) ReadAll()
    {
        var problems = new Problems();
        string law = Path.Combine(TestLaw.Repository, "data", "law");
        List<LawCase> cases =
        [
            .. Directory
                .EnumerateFiles(law, "cases.yaml", SearchOption.AllDirectories)
                .Order(StringComparer.Ordinal)
                .Select(file => Path.GetRelativePath(law, file).Replace('\\', '/'))
                .SelectMany(file =>
                    Reader.Read(file.Split('/')[0], "data/law/" + file, File.ReadAllText(Path.Combine(law, file)), problems)
                ),
        ];
        return (cases, problems);
    }
}
