using System.Globalization;
using Chandlery.Core.Declared;
using Chandlery.Intake.Drafts;
using Chandlery.Yaml;

namespace Chandlery.Sheets.Wild;

/// <summary>Compares drafts of random documents with what these say.</summary>
public sealed class WildScore
{
    /// <summary>The field of rows of which every value is right.</summary>
    public const string WholeRows = "rows whole";

    /// <summary>Counts by field.</summary>
    public SortedDictionary<string, FieldCount> Fields { get; } = new(StringComparer.Ordinal);

    /// <summary>The same for each layout.</summary>
    public SortedDictionary<string, SortedDictionary<string, FieldCount>> Layouts { get; } = new(StringComparer.Ordinal);

    /// <summary>The same for each engine, where a document's name says what printed it ("1000.groff").</summary>
    public SortedDictionary<string, SortedDictionary<string, FieldCount>> Engines { get; } = new(StringComparer.Ordinal);

    /// <summary>Every difference, with whether it was marked.</summary>
    public List<string> Differences { get; } = [];

    /// <summary>Documents that were compared.</summary>
    public int Documents { get; private set; }

    // Where the document that is being compared counts.
    private SortedDictionary<string, FieldCount>[] homes = [];

    public int WrongUnmarked => Fields.Values.Sum(f => f.WrongUnmarked);

    public int MissingUnsaid => Fields.Values.Sum(f => f.MissingUnsaid);

    /// <summary>Share of the rows of which every value is right.</summary>
    public double Whole => Fields.TryGetValue(WholeRows, out FieldCount? rows) ? rows.Recall : 1;

    public void Add(string where, WildSheet sheet, OilDraft draft)
    {
        Documents++;
        homes = [Fields, Home(Layouts, sheet.Layout), Home(Engines, EngineOf(where))];
        WildTruth truth = sheet.Truth;
        Head(where, "product name", truth.Name, draft.Name);
        if (sheet.Kind == "sheet")
        {
            Head(where, "supplier", truth.Supplier, draft.Supplier);
            Head(where, "document", truth.Document, draft.Document);
            Head(where, "version", truth.Version, draft.Version);
            Head(
                where,
                "own classes",
                truth.Classes is null ? null : Joined(truth.Classes),
                draft.Classes?.As(Joined(draft.Classes.Value))
            );
            Head(
                where,
                "flash point",
                truth.Flash,
                draft.FlashPoint?.As($"{draft.FlashPoint.Value.IsLowerBound} {Plain(draft.FlashPoint.Value.Celsius)}")
            );
            Head(where, "density", truth.Density, draft.DensityGramsPerMl?.As(Plain(draft.DensityGramsPerMl.Value)));
        }

        Head(where, "revision date", truth.Revised?.ToString("O"), draft.Revised?.As(draft.Revised.Value.ToString("O")));
        if (sheet.Kind == "ifra")
        {
            Ifra(where, truth, draft);
            return;
        }

        Rows(where, sheet, draft);
    }

    private static string EngineOf(string where) => where.Split('.') is [_, var engine] ? engine : "own press";

    private static SortedDictionary<string, FieldCount> Home(
        SortedDictionary<string, SortedDictionary<string, FieldCount>> all,
        string key
    ) => all.TryGetValue(key, out SortedDictionary<string, FieldCount>? known) ? known : all[key] = new(StringComparer.Ordinal);

    private void Ifra(string where, WildTruth truth, OilDraft draft)
    {
        IReadOnlyList<(string Category, Found<string> Limit)> read = draft.Ifra?.Limits ?? [];
        foreach ((string category, string limit) in truth.Ifra)
        {
            Found<string>? found = read.FirstOrDefault(l => l.Category == category).Limit;
            bool said = draft.Doubts.Any(d =>
                d.Contains($"category {category},", StringComparison.Ordinal) || d.Contains("could be read", StringComparison.Ordinal)
            );
            Compare(where + " " + category, "IFRA limit", limit, found?.Value, found?.Doubts.Count > 0, said);
        }

        foreach ((string category, Found<string> limit) in read.Where(l => truth.Ifra.All(t => t.Category != l.Category)))
        {
            Compare(where + " " + category, "IFRA limit", null, limit.Value, limit.Doubts.Count > 0, false);
        }
    }

    private void Rows(string where, WildSheet sheet, OilDraft draft)
    {
        string prefix = sheet.Kind == "allergens" ? "allergen, " : "";
        bool nothing = draft.Doubts.Any(d =>
            d.Contains("could be read", StringComparison.Ordinal) || d.Contains("read from a picture", StringComparison.Ordinal)
        );
        foreach (WildIngredient t in sheet.Truth.Ingredients)
        {
            string at = $"{where} {t.Cas}";
            DraftIngredient? row = draft.Ingredients.FirstOrDefault(i => i.Cas?.Value == t.Cas);
            bool said = nothing || draft.Doubts.Any(d => d.Contains(t.Cas, StringComparison.Ordinal));
            Compare(at, prefix + "CAS number", t.Cas, row?.Cas?.Value, false, said);
            CountRow(row is not null && Row(at, prefix, t, row));
        }

        foreach (DraftIngredient extra in draft.Ingredients.Where(i => sheet.Truth.Ingredients.All(t => t.Cas != i.Cas?.Value)))
        {
            Compare(
                where,
                prefix + "CAS number",
                null,
                extra.Cas?.Value ?? extra.Name.Value,
                extra.Doubts.Count > 0 || extra.Name.Doubts.Count > 0 || extra.Cas?.Doubts.Count > 0,
                false
            );
        }
    }

    private bool Row(string where, string prefix, WildIngredient t, DraftIngredient row)
    {
        bool rowDoubted = row.Doubts.Count > 0;
        bool Is<T>(string field, string? truth, string? drafted, Found<T>? found) =>
            Compare(
                where,
                field,
                truth,
                drafted,
                rowDoubted || found?.Doubts.Count > 0,
                rowDoubted || (field is "M-factors" or "ATE" or "limits" && row.Classes?.Doubts.Count > 0)
            );
        (string? low, string? high) = Ends(row.Share?.Value);
        return Is(prefix + "name", t.Name, row.Name.Value.Length == 0 ? null : row.Name.Value, row.Name)
            & Is("EC number", t.Ec, row.Ec?.Value, row.Ec)
            & Is(prefix + "share, low end", Plain(t.Share.Low), low, row.Share)
            & Is(prefix + "share, high end", Plain(t.Share.High), high, row.Share)
            & Is("classes", t.Classes is null ? null : Joined(t.Classes), row.Classes is { } c ? Joined(c.Value) : null, row.Classes)
            & Is("limits", t.Limits.Count == 0 ? null : Joined(t.Limits), row.Limits is { } l ? Joined(l.Value) : null, row.Limits)
            & Is(
                "ATE",
                t.OralMgPerKg is { } a ? $"Oral {Plain(a)}" : null,
                row.Toxicity is { } x ? string.Join(' ', x.Value.Select(e => $"{e.Route} {Plain(e.Value)}")) : null,
                row.Toxicity
            )
            & Is(
                "M-factors",
                t.AcuteM is null && t.ChronicM is null ? null : $"{t.AcuteM}/{t.ChronicM}",
                row.M is { Value: var m } ? $"{m.Acute}/{m.Chronic}" : null,
                row.M
            );
    }

    private static (string? Low, string? High) Ends(string? share) =>
        share is null ? (null, null)
        : DeclaredRange.Parse(share).OrNull() is { } r ? (Plain(r.Low.Value), r.OpenAbove ? share : Plain(r.High.Value))
        : (share, share);

    private static string Plain(double value) => Math.Round(value, 8).ToString(CultureInfo.InvariantCulture);

    private static string Joined(IEnumerable<string> texts) => string.Join(" | ", texts.Order(StringComparer.Ordinal));

    // What is missing in the head is always said in the draft's text.
    private void Head(string where, string field, string? truth, Found<string>? found) =>
        Compare(where, field, truth, found?.Value, found?.Doubts.Count > 0, true);

    private void CountRow(bool isWhole)
    {
        foreach (SortedDictionary<string, FieldCount> home in homes)
        {
            FieldCount count = Of(home, WholeRows);
            count.Printed++;
            count.Drafted++;
            count.Right += isWhole ? 1 : 0;
        }
    }

    private static FieldCount Of(SortedDictionary<string, FieldCount> counts, string field) =>
        counts.TryGetValue(field, out FieldCount? known) ? known : counts[field] = new FieldCount();

    private bool Compare(string where, string field, string? truth, string? drafted, bool? marked, bool said)
    {
        bool isRight = truth == drafted;
        bool fine = isRight || (drafted is null ? said || marked == true : marked == true);
        foreach (SortedDictionary<string, FieldCount> home in homes)
        {
            FieldCount count = Of(home, field);
            count.Printed += truth is null ? 0 : 1;
            count.Drafted += drafted is null ? 0 : 1;
            count.Right += isRight && truth is not null ? 1 : 0;
            count.Doubted += isRight && truth is not null && marked == true ? 1 : 0;
            count.WrongUnmarked += fine || drafted is null ? 0 : 1;
            count.MissingUnsaid += fine || drafted is not null ? 0 : 1;
        }

        if (!isRight)
        {
            Differences.Add($"{(fine ? "marked" : "UNMARKED")} {where} {field}: '{truth}' was read as '{drafted}'");
        }

        return isRight;
    }
}
