using System.Collections.Concurrent;
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
/// <param name="state">What the mixture is; null where that is not known, so that no class is left off for it.</param>
internal sealed class SubstanceResolver(SubstanceList list, DateOnly day, HarmonisedClasses harmonised, PhysicalState? state = null)
{
    private readonly ConcurrentDictionary<DeclaredLines, Substance> known = new();

    /// <summary>All substances of a composition.</summary>
    public IReadOnlyList<Substance> Resolve(Composition composition) => [.. composition.Ingredients.Select(Resolve)];

    /// <summary>The same for mixtures of another state.</summary>
    public SubstanceResolver ForState(PhysicalState other) => other == state ? this : new SubstanceResolver(list, day, harmonised, other);

    // What counts depends on the declared lines, not on shares: candles of the same oils share the answer.
    /// <summary>One substance.</summary>
    public Substance Resolve(ComposedIngredient ingredient) =>
        known.GetOrAdd(new DeclaredLines(ingredient.Parts), _ => Decide(ingredient)) with
        {
            Ingredient = ingredient,
        };

    private Substance Decide(ComposedIngredient ingredient)
    {
        Listing listing = list.Find(ingredient.Identity, day, harmonised);
        var remarks = new List<string>(ListingRemarks.Of(ingredient.Identity, ingredient.Parts, listing, list, harmonised, state));
        IReadOnlyList<Contribution> parts = ingredient.Parts;
        bool isListed = listing.Entries.Any(e => e.Claims.Any());
        bool isDeclared = parts.Any(p => p.Ingredient.Claims is not null);
        if (parts.Any(p => p.Ingredient.Claims is null) && isDeclared && !isListed)
        {
            remarks.Add(
                $"{ingredient.Identity.Name}: one sheet says nothing about its classes; those of the other sheet are used for all of it."
            );
        }

        if (isListed && !isDeclared)
        {
            remarks.Add(
                $"{ingredient.Identity.Name}: no sheet says anything about its classes; only the harmonised ones are used, and other hazards that it may have are not known. Ask the supplier."
            );
        }

        List<HazardSource> sources = [.. Sources(ingredient, listing)];
        List<Word> words = [.. sources.SelectMany(s => s.Claims.Select(c => new Word(c, s)))];
        var hazards = new List<SubstanceHazard>();
        var differences = new SourceDifferences(ingredient.Identity.Name);
        var told = new List<string>();
        foreach (IGrouping<string, Word> group in words.GroupBy(w => w.Claim.Category.Group))
        {
            hazards.Add(Choose([.. group], harmonised.LaterOf(listing.CasNumbers), differences, told));
        }

        (string Name, NameOrigin Origin) printed = PrintedName.WithOrigin(ingredient.Identity, listing);
        List<OwnLimits> limits = [.. SourceLimits.ByGroup(sources)];
        told.AddRange(differences.OfLimits(sources, limits));
        return new Substance
        {
            Ingredient = ingredient,
            IsKnown = isDeclared || isListed,
            Hazards = hazards,
            FromLimits = [.. limits.Where(l => hazards.All(h => h.Category.Group != l.Group)).Select(FromLimits)],
            OwnLimits = limits,
            Toxicity = Toxicity(ingredient, listing),
            CasNumbers = listing.CasNumbers,
            Name = printed.Name,
            NameOrigin = printed.Origin,
            NonAdditiveKind = NonAdditiveKinds.Of(ingredient.Identity, listing.Known),
            Differences = told,
            Remarks = [.. remarks, .. told],
        };
    }

    // Sheets that say nothing about classes are no source; one that says "not classified" is.
    private IEnumerable<HazardSource> Sources(ComposedIngredient ingredient, Listing listing)
    {
        foreach (Contribution part in ingredient.Parts.Where(p => p.Ingredient.Claims is not null || p.Ingredient.SpecificLimits.Count > 0))
        {
            yield return new HazardSource(
                part.Ingredient.Claims ?? [],
                part.Ingredient.SpecificLimits,
                part.Ingredient.AcuteM,
                part.Ingredient.ChronicM,
                part.Document.Length == 0 ? part.Product : $"{part.Product} ({part.Document})",
                Standing.Supplier
            );
        }

        Standing here = harmonised.Bind ? Standing.Binding : Standing.Evidence;
        foreach (HarmonisedEntry entry in listing.Entries)
        {
            yield return FromEntry(ingredient, entry, here);
        }

        foreach (HarmonisedEntry entry in listing.Elsewhere)
        {
            yield return FromEntry(ingredient, entry, Standing.Elsewhere);
        }
    }

    private HazardSource FromEntry(ComposedIngredient ingredient, HarmonisedEntry entry, Standing standing)
    {
        HashSet<string> letGo = [.. ListingRemarks.NotesLetting(ingredient.Parts, entry, list, state).SelectMany(n => n.Lets)];
        return new HazardSource(
            [.. entry.Claims.Where(c => !letGo.Contains(c.Category.Group))],
            [.. entry.Limits.Where(l => !letGo.Contains(l.Category.Group))],
            entry.AcuteM,
            entry.ChronicM,
            standing == Standing.Elsewhere ? harmonised.CiteLater(entry) : harmonised.Cite(entry),
            standing
        );
    }

    private static SubstanceHazard FromLimits(OwnLimits limits)
    {
        HazardCategory worst = limits.Limits.MinBy(l => l.Category.Severity)!.Category;
        return new SubstanceHazard(worst, worst.Statement, "", 1, true, "its own limit, without a class of its own");
    }

    private static SubstanceHazard Choose(List<Word> words, string later, SourceDifferences differences, List<string> told)
    {
        Word worst = Word.Worst(words);
        HazardCategory category = worst.Claim.Category;
        told.AddRange(differences.OfClass(words, worst, later));
        bool acute = category.MultipliedBy == MFactorKind.Acute;
        bool chronic = category.MultipliedBy == MFactorKind.Chronic;
        double? acuteM = words.Max(w => w.Source.AcuteM);
        double? chronicM = words.Max(w => w.Source.ChronicM);
        double? m =
            acute ? acuteM
            : chronic ? chronicM
            : null;

        if (acute || chronic)
        {
            told.AddRange(differences.OfFactor(category, words, s => acute ? s.AcuteM : s.ChronicM));
        }

        // A sheet that gives one M-factor without saying for which class means both; the other is better than none.
        double? other =
            acute ? chronicM
            : chronic ? acuteM
            : null;
        string source = string.Join("; ", words.Where(w => w.Claim.Category == category).Select(w => w.Source.Name).Distinct());
        string organs = string.Join(", ", words.Select(w => w.Claim.Organs).Where(o => o.Length > 0).Distinct());
        return new SubstanceHazard(category, worst.Claim.Statement, organs, m ?? other ?? 1, m is not null || !(acute || chronic), source);
    }

    // An estimate that binds goes before what sheets say of the same route; elsewhere the lowest that anybody gives counts: the stricter
    // reading.
    private List<ToxicityEstimate> Toxicity(ComposedIngredient ingredient, Listing listing)
    {
        ILookup<bool, ToxicityEstimate> listed = listing.Entries.SelectMany(e => e.Toxicity).ToLookup(_ => harmonised.Bind);
        List<ToxicityEstimate> law = [.. listed[true]];
        List<ToxicityEstimate> told =
        [
            .. ingredient.Parts.SelectMany(p => p.Ingredient.Toxicity),
            .. listed[false],
            .. listing.Elsewhere.SelectMany(e => e.Toxicity),
        ];
        return [.. Enum.GetValues<ExposureRoute>().Select(route => Lowest(law, route) ?? Lowest(told, route)).OfType<ToxicityEstimate>()];
    }

    private static ToxicityEstimate? Lowest(List<ToxicityEstimate> estimates, ExposureRoute route) =>
        estimates.Where(e => e.Route == route).MinBy(e => e.Value);

    /// <summary>The declared lines that one substance of a candle comes from, told apart as objects.</summary>
    private readonly struct DeclaredLines(IReadOnlyList<Contribution> parts) : IEquatable<DeclaredLines>
    {
        private readonly Ingredient[] lines = [.. parts.Select(p => p.Ingredient)];

        public bool Equals(DeclaredLines other) => lines.AsSpan().SequenceEqual(other.lines, ReferenceEqualityComparer.Instance);

        public override bool Equals(object? obj) => obj is DeclaredLines other && Equals(other);

        public override int GetHashCode()
        {
            var hash = new HashCode();
            foreach (Ingredient line in lines)
            {
                hash.Add(line, ReferenceEqualityComparer.Instance);
            }

            return hash.ToHashCode();
        }
    }
}
