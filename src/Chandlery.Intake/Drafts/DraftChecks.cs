using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Yaml;

namespace Chandlery.Intake.Drafts;

/// <summary>Finds where a sheet contradicts itself, or what is known of substances.</summary>
public static class DraftChecks
{
    private static readonly (string Key, string AnyValue)[] Head =
    [
        ("name", "unknown"),
        ("supplier", "unknown"),
        ("document", "unknown"),
        ("revised", "2000-01-01"),
    ];

    /// <summary>
    /// The draft with doubts where a row's name goes with another number than the row's, or its EC number with another CAS number: one of
    /// the two is wrong, however clearly it was printed.
    /// </summary>
    /// <param name="draft">The draft.</param>
    /// <param name="substances">Names and numbers of substances of the trade.</param>
    public static OilDraft Marked(OilDraft draft, SubstanceList substances) =>
        draft with
        {
            Ingredients = [.. draft.Ingredients.Select(i => Marked(i, substances))],
        };

    /// <summary>
    /// Contradictions between the oil's own classes and those that its ingredients compute to, and between rows and the table of harmonised
    /// classes; what stands in the way of finding them where the draft cannot be read as a declaration yet.
    /// </summary>
    /// <param name="yaml">The drafted declaration.</param>
    /// <param name="file">Its file, for messages.</param>
    /// <param name="lawbook">The law.</param>
    /// <param name="day">The day whose law counts.</param>
    public static IReadOnlyList<string> Contradictions(string yaml, string file, Lawbook lawbook, DateOnly day)
    {
        var problems = new Problems();
        IDeclaration? declaration = Read(yaml, file, lawbook, problems);
        IEnumerable<string> toMend = problems.Found.Select(p => $"still to be mended before the file can be read: {p}");
        // What its head lacks stands in nobody's way here.
        string whole = yaml + string.Concat(Head.Where(h => !HasKey(yaml, h.Key)).Select(h => $"{h.Key}: {h.AnyValue}\n"));
        if ((declaration ?? Read(whole, file, lawbook, new Problems())) is not Oil oil || lawbook.Substances.Table is not { } table)
        {
            return [.. toMend];
        }

        LawInForce law = lawbook.Edition(table.Rules.Edition).On(day);
        return
        [
            .. declaration is null ? toMend : [],
            .. OilComparison.Contradictions(oil, law),
            .. OilComparison.AgainstTheTable(oil, law),
        ];
    }

    private static IDeclaration? Read(string yaml, string file, Lawbook lawbook, Problems problems) =>
        new DeclarationReader(lawbook.Vocabulary).Read(yaml, file, Path.GetFileNameWithoutExtension(file), problems);

    private static bool HasKey(string yaml, string key) => yaml.Split('\n').Any(l => l.StartsWith(key + ":", StringComparison.Ordinal));

    private static DraftIngredient Marked(DraftIngredient row, SubstanceList substances)
    {
        CasNumber? cas = row.Cas is { } printedCas ? CasNumber.Parse(printedCas.Value).OrNull() : null;
        EcNumber? ec = row.Ec is { } printedEc ? EcNumber.Parse(printedEc.Value).OrNull() : null;
        var identity = new SubstanceIdentity(row.Name.Value, cas, ec);
        var check = new NumberCheck(substances);
        IReadOnlyList<string> otherCas =
            row.Cas is not null && cas is null
                ? [.. substances.Named(row.Name.Value).Select(k => k.Cas).Distinct()]
                : check.CasOfName(identity);
        // With a CAS number that cannot be read, its EC number stands alone.
        IReadOnlyList<string> otherEc = check.EcOfName(identity);
        bool isOfAnother = row.Ec is { Doubts.Count: 0 } && cas is not null && IsOfAnother(identity, row.Ec.Value, check, substances);
        return row with
        {
            Cas =
                otherCas.Count == 0
                    ? row.Cas
                    : row.Cas!.Doubted(
                        $"'{row.Name.Value}' goes by CAS number {string.Join(" or ", otherCas)}: name or number is wrong on the sheet, or was read from another row"
                    ),
            Ec =
                otherEc.Count > 0
                    ? row.Ec!.Doubted(
                        $"'{row.Name.Value}' goes by EC number {string.Join(" or ", otherEc)}: name or number is wrong on the sheet, or was read from another row"
                    )
                : isOfAnother ? row.Ec!.Doubted($"it is not the EC number that goes with CAS number {cas}")
                : row.Ec,
        };
    }

    // A draft doubts more than an assessment tells: also an EC number that nobody here has for anything.
    private static bool IsOfAnother(SubstanceIdentity identity, string printed, NumberCheck check, SubstanceList substances) =>
        check.CasOfEc(identity).Count > 0 || (substances.KnownAs(identity) is { Ec: { } known } && known != printed);
}
