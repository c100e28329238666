using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Files;
using Chandlery.Intake.Drafts;
using Chandlery.Paper.Papers;
using Chandlery.Yaml;

namespace Chandlery.Hostile;

/// <summary>
/// Reads what a fuzzer sends that watches which branches were taken and bends the input towards new ones (AFL++ through
/// SharpFuzz): see tests/fuzz-guided.sh. Whatever throws here is a crash that a user would see.
/// </summary>
internal static class GuidedFuzz
{
    private const int LargestInput = 65_536;

    // Nothing that is watched may run before the fuzzer has set up its memory, so the law is read with the first input.
    private static readonly Lazy<(IReadOnlyDictionary<string, string> Data, Lawbook Lawbook)> Law = new(() =>
    {
        var problems = new Problems();
        IReadOnlyDictionary<string, string> data = ShippedFiles.Data(null, problems);
        return (data, LawReader.Read(data, PaperList.Own.Ids, problems)!);
    });

    /// <summary>Serves the fuzzer until it ends.</summary>
    /// <param name="target"><c>declaration</c> for YAML, or <c>sheet</c> for the typed text of a supplier's page.</param>
    public static void Run(string target) => SharpFuzz.Fuzzer.Run(target == "sheet" ? Sheet : Declaration, LargestInput);

    private static void Declaration(string text)
    {
        var problems = new Problems();
        if (new DeclarationReader(Law.Value.Lawbook.Vocabulary).Read(text, "bent.yaml", "bent", problems) is null && problems.None)
        {
            throw new InvalidOperationException("a declaration was refused without a word");
        }
    }

    private static void Sheet(string text)
    {
        OilDraft? draft = DraftMaker.Make(
            [new SupplierPdf("bent.pdf", [1], [TypedPage.Of(text)])],
            Law.Value.Data,
            Law.Value.Lawbook.Vocabulary,
            new Problems()
        );
        if (draft is not null)
        {
            DraftYaml.Write(draft);
        }
    }
}
