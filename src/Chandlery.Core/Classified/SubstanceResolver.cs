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
/// <param name="harmonised">What harmonised classes are under the edition.</param>
internal sealed class SubstanceResolver(SubstanceList list, DateOnly day, HarmonisedClasses harmonised)
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
        bool isKnown = ingredient.Parts.Any(p => p.Ingredient.Claims is not null) || entry?.Claims is not null;
        if (isKnown && ingredient.Parts.Any(p => p.Ingredient.Claims is null) && entry?.Claims is null)
        {
            remarks.Add(
                $"{ingredient.Identity.Name}: one sheet says nothing about its classes; those of the other sheet are used for all of it."
            );
        }

        List<Source> sources = [.. Sources(ingredient, entry)];
        List<Word> words = [.. sources.SelectMany(s => s.Claims.Select(c => new Word(c, s)))];
        var hazards = new List<SubstanceHazard>();
        foreach (IGrouping<string, Word> group in words.GroupBy(w => w.Claim.Category.Group))
        {
            hazards.Add(Choose(ingredient, [.. group], entry, remarks));
        }

        List<OwnLimits> limits = [.. LimitsByGroup(sources)];
        return new Substance
        {
            Ingredient = ingredient,
            IsKnown = isKnown,
            Hazards = hazards,
            FromLimits = [.. limits.Where(l => hazards.All(h => h.Category.Group != l.Group)).Select(FromLimits)],
            OwnLimits = limits,
            Toxicity = Toxicity(ingredient, entry),
            Name = PrintedName(ingredient, entry),
            NonAdditiveKind = NonAdditiveKinds.Of(ingredient.Identity, entry),
            Remarks = remarks,
        };
    }

    // Sheets that say nothing about classes are no source; one that says "not classified" is.
    private IEnumerable<Source> Sources(ComposedIngredient ingredient, SubstanceEntry? entry)
    {
        foreach (Contribution part in ingredient.Parts.Where(p => p.Ingredient.Claims is not null || p.Ingredient.SpecificLimits.Count > 0))
        {
            yield return new Source(
                part.Ingredient.Claims ?? [],
                part.Ingredient.SpecificLimits,
                part.Ingredient.AcuteM,
                part.Ingredient.ChronicM,
                part.Document.Length == 0 ? part.Product : $"{part.Product} ({part.Document})",
                false
            );
        }

        if (entry?.Claims is { } claims)
        {
            yield return new Source(claims, entry.Limits, entry.AcuteM, entry.ChronicM, harmonised.Cite(entry), true);
        }
    }

    private static IEnumerable<OwnLimits> LimitsByGroup(List<Source> sources) =>
        sources
            .SelectMany(s => s.Limits)
            .GroupBy(l => l.Category.Group)
            .Select(group => new OwnLimits(
                group.Key,
                [.. group.GroupBy(l => l.Category).Select(g => g.MinBy(l => l.From.Value)!)],
                MilderCount(group.Key, sources)
            ));

    // Those who give a class of the group must all give a limit with it; where nobody does, everybody must.
    private static bool MilderCount(string group, List<Source> sources)
    {
        List<Source> speaking = [.. sources.Where(s => s.Claims.Any(c => c.Category.Group == group))];
        return (speaking.Count > 0 ? speaking : sources).TrueForAll(s => s.Limits.Any(l => l.Category.Group == group));
    }

    private static SubstanceHazard FromLimits(OwnLimits limits)
    {
        HazardCategory worst = limits.Limits.MinBy(l => l.Category.Severity)!.Category;
        return new SubstanceHazard(worst, worst.Statement, "", 1, true, "its own limit, without a class of its own");
    }

    private SubstanceHazard Choose(ComposedIngredient ingredient, List<Word> words, SubstanceEntry? entry, List<string> remarks)
    {
        Word worst = words.OrderBy(w => w.Claim.Category.Severity).ThenByDescending(w => w.Source.Harmonised).First();
        HazardCategory category = worst.Claim.Category;
        Word? supplier = words.Where(w => !w.Source.Harmonised).MinBy(w => w.Claim.Category.Severity);
        bool isHarmonised = words.Any(w => w.Source.Harmonised);
        if (isHarmonised && entry is not null && (supplier is null || supplier.Claim.Category.Severity > category.Severity))
        {
            string said = supplier is null ? "does not have it" : $"says {supplier.Claim.Category.Code}";
            remarks.Add(
                $"{ingredient.Identity.Name}: the harmonised class {category.Code} ({worst.Source.Name}) is used{(harmonised.Bind ? "" : " as evidence, though it does not bind here")}; the supplier's sheet {said}."
            );
        }
        else if (words.Where(w => !w.Source.Harmonised).Select(w => w.Claim.Category).Distinct().Count() > 1)
        {
            remarks.Add(
                $"{ingredient.Identity.Name}: the sheets disagree; the worst class, {category.Code} ({worst.Source.Name}), is used."
            );
        }

        bool acute = category.MultipliedBy == MFactorKind.Acute;
        bool chronic = category.MultipliedBy == MFactorKind.Chronic;
        double? acuteM = words.Max(w => w.Source.AcuteM);
        double? chronicM = words.Max(w => w.Source.ChronicM);
        double? m =
            acute ? acuteM
            : chronic ? chronicM
            : null;

        // A sheet that gives one M-factor without saying for which class means both; the other is better than none.
        double? other =
            acute ? chronicM
            : chronic ? acuteM
            : null;
        string source = string.Join("; ", words.Where(w => w.Claim.Category == category).Select(w => w.Source.Name).Distinct());
        string organs = string.Join(", ", words.Select(w => w.Claim.Organs).Where(o => o.Length > 0).Distinct());
        return new SubstanceHazard(category, worst.Claim.Statement, organs, m ?? other ?? 1, m is not null || !(acute || chronic), source);
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

    private sealed record Source(
        IReadOnlyList<HazardClaim> Claims,
        IReadOnlyList<SpecificLimit> Limits,
        double? AcuteM,
        double? ChronicM,
        string Name,
        bool Harmonised
    );

    private sealed record Word(HazardClaim Claim, Source Source);
}
