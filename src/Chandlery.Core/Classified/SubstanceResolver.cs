using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;

namespace Chandlery.Core.Classified;

/// <summary>
/// Decides which hazards of a substance count: the worst word of any supplier, and never less than the harmonised
/// class (CLP Art. 4(3)).
/// </summary>
/// <param name="list">The list of substances.</param>
/// <param name="day">The day that decides which entries hold.</param>
/// <param name="binding">False where harmonised classes are only evidence.</param>
public sealed class SubstanceResolver(SubstanceList list, DateOnly day, bool binding = true)
{
    private readonly ConcurrentDictionary<DeclaredLines, Substance> known = new();

    /// <summary>All substances of a composition.</summary>
    public IReadOnlyList<Substance> Resolve(Composition composition) => [.. composition.Ingredients.Select(Resolve)];

    // What counts depends on the declared lines, not on shares: candles of the same oils share the answer.
    private Substance Resolve(ComposedIngredient ingredient) =>
        known.GetOrAdd(new DeclaredLines(ingredient.Parts), _ => Decide(ingredient)) with
        {
            Ingredient = ingredient,
        };

    private Substance Decide(ComposedIngredient ingredient)
    {
        SubstanceEntry? entry = list.Find(ingredient.Identity.Cas, day);
        var remarks = new List<string>();
        List<Word> words = [.. SupplierWords(ingredient)];
        bool isKnown = ingredient.Parts.Any(p => p.Ingredient.Claims is not null) || entry?.Claims is not null;
        if (isKnown && ingredient.Parts.Any(p => p.Ingredient.Claims is null) && entry?.Claims is null)
        {
            remarks.Add(
                $"{ingredient.Identity.Name}: one sheet says nothing about its classes; those of the other sheet are used for all of it."
            );
        }

        var hazards = new List<SubstanceHazard>();
        IEnumerable<Word> all = entry?.Claims is null ? words : words.Concat(entry.Claims.Select(c => HarmonisedWord(entry, c)));
        foreach (IGrouping<string, Word> group in all.GroupBy(w => w.Claim.Category.Group))
        {
            hazards.Add(Choose(ingredient, [.. group], entry, remarks));
        }

        return new Substance(
            ingredient,
            isKnown,
            hazards,
            Toxicity(ingredient, entry),
            PrintedName(ingredient, entry),
            NonAdditiveKinds.Of(ingredient.Identity, entry),
            remarks
        );
    }

    private static IEnumerable<Word> SupplierWords(ComposedIngredient ingredient)
    {
        foreach (Contribution part in ingredient.Parts)
        {
            foreach (HazardClaim claim in part.Ingredient.Claims ?? [])
            {
                string source = part.Document.Length == 0 ? part.Product : $"{part.Product} ({part.Document})";
                yield return new Word(
                    claim,
                    part.Ingredient.SpecificLimits,
                    part.Ingredient.AcuteM,
                    part.Ingredient.ChronicM,
                    source,
                    false
                );
            }
        }
    }

    private static Word HarmonisedWord(SubstanceEntry entry, HazardClaim claim) =>
        new(claim, entry.Limits, entry.AcuteM, entry.ChronicM, $"CLP Annex VI, {entry.IndexNumber} ({entry.Act})", true);

    private SubstanceHazard Choose(ComposedIngredient ingredient, List<Word> words, SubstanceEntry? entry, List<string> remarks)
    {
        Word worst = words.OrderBy(w => w.Claim.Category.Severity).ThenByDescending(w => w.Harmonised).First();
        HazardCategory category = worst.Claim.Category;
        Word? supplier = words.Where(w => !w.Harmonised).MinBy(w => w.Claim.Category.Severity);
        bool harmonised = words.Any(w => w.Harmonised);
        if (harmonised && entry is not null && (supplier is null || supplier.Claim.Category.Severity > category.Severity))
        {
            string said = supplier is null ? "does not have it" : $"says {supplier.Claim.Category.Code}";
            remarks.Add(
                $"{ingredient.Identity.Name}: the harmonised class {category.Code} ({worst.Source}) is used{(binding ? "" : " as evidence, though it does not bind here")}; the supplier's sheet {said}."
            );
        }
        else if (words.Where(w => !w.Harmonised).Select(w => w.Claim.Category).Distinct().Count() > 1)
        {
            remarks.Add($"{ingredient.Identity.Name}: the sheets disagree; the worst class, {category.Code} ({worst.Source}), is used.");
        }

        List<SpecificLimit> limits =
        [
            .. words
                .SelectMany(w => w.Limits)
                .Where(l => l.Category.Group == category.Group)
                .GroupBy(l => l.Category)
                .Select(g => g.MinBy(l => l.From.Value)!),
        ];
        bool milderCount =
            words.All(w => w.Limits.Any(l => l.Category.Group == category.Group))
            && (!harmonised || words.Where(w => w.Harmonised).All(w => w.Limits.Count > 0));
        bool acute = category.ClassCode == "Aquatic Acute" && category.Category == "1";
        bool chronic = category.ClassCode == "Aquatic Chronic" && category.Category == "1";
        double? m =
            acute ? words.Max(w => w.AcuteM)
            : chronic ? words.Max(w => w.ChronicM)
            : null;
        string source = string.Join("; ", words.Where(w => w.Claim.Category == category).Select(w => w.Source).Distinct());
        return new SubstanceHazard(
            category,
            worst.Claim.Statement,
            limits,
            milderCount,
            m ?? 1,
            m is not null || !(acute || chronic),
            source
        );
    }

    private static List<ToxicityEstimate> Toxicity(ComposedIngredient ingredient, SubstanceEntry? entry)
    {
        var estimates = ingredient.Parts.SelectMany(p => p.Ingredient.Toxicity).ToList();
        return
        [
            .. Enum.GetValues<ExposureRoute>()
                .Select(route =>
                    entry?.Toxicity.FirstOrDefault(e => e.Route == route) ?? estimates.Where(e => e.Route == route).MinBy(e => e.Value)
                )
                .OfType<ToxicityEstimate>(),
        ];
    }

    // Annex VI names first, then the cosmetics law's allergen names, then whatever the sheet prints.
    private string PrintedName(ComposedIngredient ingredient, SubstanceEntry? entry) =>
        entry is { Claims: not null, Names: [var harmonised, ..] } ? harmonised
        : list.AllergenName(ingredient.Identity.Cas) is { } allergen ? allergen
        : entry is { Names: [var known, ..] } ? known
        : ingredient.Identity.Name;

    /// <summary>The declared lines that one substance of a candle comes from, told apart as objects.</summary>
    private readonly struct DeclaredLines(IReadOnlyList<Contribution> parts) : IEquatable<DeclaredLines>
    {
        private readonly Ingredient[] lines = [.. parts.Select(p => p.Ingredient)];

        public bool Equals(DeclaredLines other) =>
            lines.Length == other.lines.Length && lines.Zip(other.lines).All(pair => ReferenceEquals(pair.First, pair.Second));

        public override bool Equals(object? obj) => obj is DeclaredLines other && Equals(other);

        public override int GetHashCode()
        {
            var hash = new HashCode();
            foreach (Ingredient line in lines)
            {
                hash.Add(RuntimeHelpers.GetHashCode(line));
            }

            return hash.ToHashCode();
        }
    }

    private sealed record Word(
        HazardClaim Claim,
        IReadOnlyList<SpecificLimit> Limits,
        double? AcuteM,
        double? ChronicM,
        string Source,
        bool Harmonised
    );
}
