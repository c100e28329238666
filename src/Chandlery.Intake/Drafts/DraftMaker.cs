using System.Security.Cryptography;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Intake.Wording;
using Chandlery.Yaml;

namespace Chandlery.Intake.Drafts;

/// <summary>Drafts oils' declarations from suppliers' PDFs; it may be used for many, one after the other or at once.</summary>
public sealed class DraftMaker
{
    private readonly SheetReader reader;

    private DraftMaker(SheetReader reader) => this.reader = reader;

    /// <summary>What drafts; null with problems when the words of sheets cannot be read.</summary>
    /// <param name="data">Texts by path relative to <c>data/</c>; how suppliers say things is in <c>languages/</c>.</param>
    /// <param name="vocabulary">Hazard classes.</param>
    /// <param name="problems">Collects what is wrong.</param>
    public static DraftMaker? Of(IReadOnlyDictionary<string, string> data, HazardVocabulary vocabulary, Problems problems)
    {
        var own = new Problems();
        var wording = SheetWording.Read(vocabulary, data, own);
        problems.AddRange(own.Found);
        return own.None ? new DraftMaker(new SheetReader(wording, vocabulary)) : null;
    }

    /// <summary>One oil's draft, or null with problems.</summary>
    /// <param name="pdfs">The PDFs of one oil; the safety data sheet may be joined by an IFRA certificate and an allergen statement.</param>
    /// <param name="data">Texts by path relative to <c>data/</c>.</param>
    /// <param name="vocabulary">Hazard classes.</param>
    /// <param name="problems">Collects what is wrong.</param>
    public static OilDraft? Make(
        IReadOnlyList<SupplierPdf> pdfs,
        IReadOnlyDictionary<string, string> data,
        HazardVocabulary vocabulary,
        Problems problems
    ) => Of(data, vocabulary, problems)?.Make(pdfs, problems);

    /// <summary>An oil's draft, or null with problems.</summary>
    /// <param name="pdfs">The PDFs of one oil.</param>
    /// <param name="problems">Collects what is wrong.</param>
    public OilDraft? Make(IReadOnlyList<SupplierPdf> pdfs, Problems problems)
    {
        var own = new Problems();
        var read = new List<(DraftSource Source, OilDraft Draft)>();
        for (int i = 0; i < pdfs.Count && own.None; i++)
        {
            if (reader.Read(pdfs[i].Pages, i, out SheetKind kind) is { } draft)
            {
                string hash = Convert.ToHexStringLower(SHA256.HashData(pdfs[i].Content));
                OilDraft told = PageDoubts.Mark(draft, pdfs[i].Pages);
                read.Add((new DraftSource(Path.GetFileName(pdfs[i].File), hash, kind), told));
            }
            else
            {
                own.Add(
                    new TextPlace(pdfs[i].File, 0, 0),
                    "This is no safety data sheet, IFRA certificate or allergen statement that can be recognised.",
                    "Sheets in English, German, French, Spanish, Italian, Dutch and Polish are read; type other sheets in by hand."
                );
            }
        }

        problems.AddRange(own.Found);
        return own.None && read.Count > 0 ? Merged(read) : null;
    }

    private static OilDraft Merged(List<(DraftSource Source, OilDraft Draft)> read)
    {
        List<(DraftSource Source, OilDraft Draft)> inOrder = [.. read.OrderBy(r => r.Source.Kind)];
        OilDraft main = inOrder[0].Draft;
        var doubts = new List<string>(inOrder.SelectMany(r => r.Draft.Doubts));
        foreach (var twice in read.GroupBy(r => r.Source.Kind).Where(g => g.Count() > 1))
        {
            doubts.Add($"there are {twice.Count()} PDFs of the kind {twice.Key}; are they all of this oil?");
        }

        if (inOrder[0].Source.Kind != SheetKind.SafetyDataSheet)
        {
            doubts.Add("there is no safety data sheet among the PDFs: hazard classes are missing");
        }

        foreach ((DraftSource source, OilDraft draft) in inOrder.Skip(1))
        {
            if (draft.Name is { } name && main.Name is { } own && !name.Value.Equals(own.Value, StringComparison.OrdinalIgnoreCase))
            {
                doubts.Add($"{source.File} is about '{name.Value}', the first sheet about '{own.Value}': are they the same oil?");
            }

            main = main with { Ifra = main.Ifra ?? draft.Ifra, Ingredients = WithStatement(main.Ingredients, draft.Ingredients, doubts) };
        }

        double highs = main.Ingredients.Sum(i => i.Share is { } s ? DeclaredRange.Parse(s.Value).OrNull()?.High.Value ?? 0 : 0);
        double lows = main.Ingredients.Sum(i => i.Share is { } s ? DeclaredRange.Parse(s.Value).OrNull()?.Low.Value ?? 0 : 0);
        if (lows > 100)
        {
            doubts.Add($"the low ends of the shares add up to {Math.Round(lows, 3)} %, more than the whole");
        }
        else if (main.Ingredients.Count > 0 && highs < 100 && main.Ingredients.All(i => i.Share is not null))
        {
            doubts.Add($"the shares reach {Math.Round(highs, 3)} % at most; the rest is not on the sheet and counts as unknown");
        }

        return main with
        {
            Sources = [.. read.Select(r => r.Source)],
            Doubts = doubts,
        };
    }

    // The statement's exact figures check the sheet's ranges; allergens that the sheet lacks join the table without classes.
    private static List<DraftIngredient> WithStatement(
        IReadOnlyList<DraftIngredient> sheet,
        IReadOnlyList<DraftIngredient> statement,
        List<string> doubts
    )
    {
        List<DraftIngredient> all = [.. sheet];
        foreach (DraftIngredient allergen in statement)
        {
            int at = all.FindIndex(i => i.Cas is not null && i.Cas.Value == allergen.Cas?.Value);
            if (at < 0)
            {
                all.Add(allergen with { Doubts = [.. allergen.Doubts, "only the allergen statement lists it; its classes are not known"] });
                continue;
            }

            DeclaredRange? range = all[at].Share is { } s ? DeclaredRange.Parse(s.Value).OrNull() : null;
            DeclaredRange? exact = allergen.Share is { } e ? DeclaredRange.Parse(e.Value).OrNull() : null;
            if (range is not null && exact is not null && (exact.High.Value > range.High.Value || exact.Low.Value < range.Low.Value))
            {
                doubts.Add($"{all[at].Name.Value}: the allergen statement says {exact.Printed}, outside the sheet's {range.Printed}");
            }
        }

        return all;
    }
}
