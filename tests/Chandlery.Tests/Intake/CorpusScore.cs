using Chandlery.Core.Declared;
using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Sheets;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Intake;

/// <summary>Counts for one field of the corpus.</summary>
internal sealed class FieldScore
{
    /// <summary>Values that the sheets print.</summary>
    public int Printed { get; set; }

    /// <summary>Values that were drafted.</summary>
    public int Drafted { get; set; }

    /// <summary>Drafted values that are right.</summary>
    public int Right { get; set; }

    /// <summary>Values that are wrong or missing and not marked for review.</summary>
    public int Unmarked { get; set; }

    public double Precision => Drafted == 0 ? 1 : (double)Right / Drafted;

    public double Recall => Printed == 0 ? 1 : (double)Right / Printed;
}

/// <summary>Compares drafts of the corpus with what its sheets are known to say.</summary>
internal sealed class CorpusScore
{
    public static string Folder => Path.Combine(TestLaw.Repository, "tests", "Chandlery.Sheets", "pdf");

    public SortedDictionary<string, FieldScore> Fields { get; } = [];

    /// <summary>Every difference, with whether it was marked.</summary>
    public List<string> Differences { get; } = [];

    public static OilDraft Draft(params string[] files) => TestDrafts.Of([.. files.Select(Open)]);

    private static SupplierPdf Open(string file)
    {
        byte[] content = File.ReadAllBytes(Path.Combine(Folder, file));
        return new SupplierPdf(file, content, PdfWords.Parse(content).Value);
    }

    public void Add(string file, Truth truth, OilDraft draft)
    {
        bool all = draft.Doubts.Any(d =>
            d.Contains("row missing", StringComparison.Ordinal) || d.Contains("could be read", StringComparison.Ordinal)
        );
        Compare(file, "product name", truth.Name, draft.Name?.Value, draft.Name?.Doubts.Count > 0 || draft.Name is null);
        Compare(file, "supplier", truth.Supplier, draft.Supplier?.Value, draft.Supplier is null || draft.Supplier.Doubts.Count > 0);
        Compare(file, "document", truth.Document, draft.Document?.Value, draft.Document is null || draft.Document.Doubts.Count > 0);
        Compare(file, "version", truth.Version, draft.Version?.Value, draft.Version is null || draft.Version.Doubts.Count > 0);
        Compare(
            file,
            "revised",
            truth.Revised.ToString("O"),
            draft.Revised?.Value.ToString("O"),
            draft.Revised is null || draft.Revised.Doubts.Count > 0
        );
        Compare(
            file,
            "own classes",
            Joined(truth.Classes),
            draft.Classes is null ? null : Joined(draft.Classes.Value),
            draft.Classes is null || draft.Classes.Doubts.Count > 0
        );
        Compare(
            file,
            "flash point",
            $"{truth.FlashIsLowerBound} {truth.FlashCelsius} closed cup",
            draft.FlashPoint is { Value: var f } ? $"{f.IsLowerBound} {f.Celsius} {f.Method}" : null,
            draft.FlashPoint is null || draft.FlashPoint.Doubts.Count > 0
        );
        Compare(
            file,
            "density",
            $"{truth.Density}",
            draft.DensityGramsPerMl is { } d ? $"{d.Value}" : null,
            draft.DensityGramsPerMl is null || draft.DensityGramsPerMl.Doubts.Count > 0
        );
        foreach (TruthIngredient t in truth.Ingredients)
        {
            DraftIngredient? row = draft.Ingredients.FirstOrDefault(i => i.Cas?.Value == t.Cas);
            Compare(file, "row", t.Cas, row?.Cas?.Value, all);
            if (row is not null)
            {
                Add(file, t, row);
            }
        }

        foreach (DraftIngredient extra in draft.Ingredients.Where(i => truth.Ingredients.All(t => t.Cas != i.Cas?.Value)))
        {
            Compare(file, "row", null, extra.Cas?.Value ?? extra.Name.Value, extra.Doubts.Count > 0);
        }
    }

    private void Add(string file, TruthIngredient t, DraftIngredient row)
    {
        bool Marked<T>(Found<T>? found) => row.Doubts.Count > 0 || found?.Doubts.Count > 0;
        string where = $"{file} {t.Cas}";
        Compare(where, "name", t.Name, row.Name.Value, Marked(row.Name));
        Compare(where, "EC number", file.Contains("latex-open", StringComparison.Ordinal) ? null : t.Ec, row.Ec?.Value, Marked(row.Ec));
        Compare(where, "share", Range(t.Share), row.Share is { } s ? Range(s.Value) : null, Marked(row.Share));
        Compare(where, "classes", Joined(t.Classes), row.Classes is { } c ? Joined(c.Value) : null, Marked(row.Classes));
        bool all = file.Contains("stacked", StringComparison.Ordinal);
        if (all)
        {
            Compare(
                where,
                "limits",
                t.Limits.Count == 0 ? null : Joined(t.Limits),
                row.Limits is { } l ? Joined(l.Value) : null,
                Marked(row.Limits) || Marked(row.Classes)
            );
        }

        if (all || file.Contains("latex-open", StringComparison.Ordinal))
        {
            Compare(
                where,
                "ATE",
                t.OralMgPerKg is { } a ? $"Oral {a}" : null,
                row.Toxicity is { } x ? string.Join(' ', x.Value.Select(e => $"{e.Route} {e.Value}")) : null,
                Marked(row.Toxicity) || Marked(row.Classes)
            );
        }

        Compare(
            where,
            "M-factors",
            t.AcuteM is null && t.ChronicM is null ? null : $"{t.AcuteM}/{t.ChronicM}",
            row.M is { Value: var m } ? $"{m.Acute}/{m.Chronic}" : null,
            Marked(row.M) || Marked(row.Classes)
        );
    }

    private static string Joined(IEnumerable<string> texts) => string.Join(" | ", texts.Order(StringComparer.Ordinal));

    private static string Range(string text) =>
        DeclaredRange.Parse(text).OrNull() is { } r ? $"{r.Low.Value} {r.High.Value} {r.OpenAbove}" : text;

    private void Compare(string where, string field, string? truth, string? drafted, bool marked)
    {
        FieldScore score = Fields.TryGetValue(field, out FieldScore? known) ? known : Fields[field] = new FieldScore();
        score.Printed += truth is null ? 0 : 1;
        score.Drafted += drafted is null ? 0 : 1;
        if (truth == drafted)
        {
            score.Right += truth is null ? 0 : 1;
            return;
        }

        score.Unmarked += marked ? 0 : 1;
        Differences.Add($"{(marked ? "marked" : "UNMARKED")} {where} {field}: '{truth}' was read as '{drafted}'");
    }
}
