using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

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

        List<Source> sources = [.. Sources(ingredient, listing)];
        List<Word> words = [.. sources.SelectMany(s => s.Claims.Select(c => new Word(c, s)))];
        var hazards = new List<SubstanceHazard>();
        var differences = new List<string>();
        foreach (IGrouping<string, Word> group in words.GroupBy(w => w.Claim.Category.Group))
        {
            hazards.Add(Choose(ingredient, [.. group], harmonised.LaterOf(listing.CasNumbers), differences));
        }

        (string Name, NameOrigin Origin) printed = PrintedName.WithOrigin(ingredient.Identity, listing);
        List<OwnLimits> limits = [.. LimitsByGroup(sources)];
        differences.AddRange(LimitDifferences(ingredient.Identity.Name, sources, limits));
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
            Differences = differences,
            Remarks = [.. remarks, .. differences],
        };
    }

    // Sheets that say nothing about classes are no source; one that says "not classified" is.
    private IEnumerable<Source> Sources(ComposedIngredient ingredient, Listing listing)
    {
        foreach (Contribution part in ingredient.Parts.Where(p => p.Ingredient.Claims is not null || p.Ingredient.SpecificLimits.Count > 0))
        {
            yield return new Source(
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

    private Source FromEntry(ComposedIngredient ingredient, HarmonisedEntry entry, Standing standing)
    {
        HashSet<string> letGo = [.. ListingRemarks.NotesLetting(ingredient.Parts, entry, list, state).SelectMany(n => n.Lets)];
        return new Source(
            [.. entry.Claims.Where(c => !letGo.Contains(c.Category.Group))],
            [.. entry.Limits.Where(l => !letGo.Contains(l.Category.Group))],
            entry.AcuteM,
            entry.ChronicM,
            standing == Standing.Elsewhere ? harmonised.CiteLater(entry) : harmonised.Cite(entry),
            standing
        );
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

    // Those who give a class of the group must all give a limit with it; where nobody does, everybody must. An entry that binds gives its
    // limits together with its class (CLP Art. 4(3), Art. 10(1)): a sheet that repeats the class need not repeat them. A sheet with
    // another class must, because nothing says that the entry's limits hold for that one too: the stricter reading.
    private static bool MilderCount(string group, List<Source> sources)
    {
        List<Source> speaking = [.. sources.Where(s => Speaks(s, group))];
        return (speaking.Count > 0 ? speaking : sources).TrueForAll(s =>
            s.Limits.Any(l => l.Category.Group == group) || IsOfTheEntry(s, group, sources)
        );
    }

    // True for a sheet all of whose classes of the group are those of an entry that binds and gives limits, or plainly milder.
    private static bool IsOfTheEntry(Source sheet, string group, List<Source> sources)
    {
        List<HazardClaim> law =
        [
            .. sources
                .Where(s => s.Standing == Standing.Binding && s.Limits.Any(l => l.Category.Group == group))
                .SelectMany(s => s.Claims)
                .Where(c => c.Category.Group == group),
        ];
        return sheet.Standing == Standing.Supplier
            && law.Count > 0
            && sheet.Claims.Where(c => c.Category.Group == group).All(said => law.Exists(l => IsCovered(said, l)));
    }

    // Letters of a statement (H360D) and organs narrow an entry to one effect: a sheet that does not name the same one may mean another.
    private static bool IsCovered(HazardClaim said, HazardClaim law) =>
        said.Category.Severity >= law.Category.Severity
        && (said.Statement == law.Statement || law.Statement == law.Category.Statement)
        && (said.Organs == law.Organs || law.Organs.Length == 0);

    // Where a sheet's limits are others than an entry's, and where an entry's are not followed upwards.
    private static IEnumerable<string> LimitDifferences(string name, List<Source> sources, List<OwnLimits> limits)
    {
        foreach (OwnLimits own in limits)
        {
            foreach (SpecificLimit counted in own.Limits)
            {
                List<Source> giving = [.. sources.Where(s => s.Limits.Any(l => l.Category == counted.Category))];
                Source? law = giving.Where(s => s.Standing != Standing.Supplier).MinBy(s => LimitOf(s, counted.Category));
                Source? sheet = giving.Where(s => s.Standing == Standing.Supplier).MinBy(s => LimitOf(s, counted.Category));
                if (law is null)
                {
                    continue;
                }

                double ofTheLaw = LimitOf(law, counted.Category);
                if (sheet is not null && LimitOf(sheet, counted.Category) < ofTheLaw)
                {
                    yield return $"{name}: the supplier's limit for {counted.Category.Code}, {Figures.Plain(LimitOf(sheet, counted.Category))} % ({sheet.Name}), is lower than the harmonised {Figures.Plain(ofTheLaw)} % ({law.Name}), and is kept.";
                }
                else if (sheet is not null && LimitOf(sheet, counted.Category) > ofTheLaw)
                {
                    yield return $"{name}: the harmonised limit for {counted.Category.Code}, {Figures.Plain(ofTheLaw)} % ({law.Name}), is used; the supplier's sheet says {Figures.Plain(LimitOf(sheet, counted.Category))} %.";
                }
            }

            // Only a sheet that has another class of the group is in the way of an entry's limits.
            Source? entry = sources.Find(s =>
                s.Standing == Standing.Binding && s.Limits.Any(l => l.Category.Group == own.Group) && Speaks(s, own.Group)
            );
            Source? other = sources.Find(s =>
                s.Standing == Standing.Supplier
                && Speaks(s, own.Group)
                && !s.Limits.Any(l => l.Category.Group == own.Group)
                && !IsOfTheEntry(s, own.Group, sources)
            );
            if (entry is not null && other is not null)
            {
                string classes = string.Join(", ", other.Claims.Where(c => c.Category.Group == own.Group).Select(c => c.Category.Code));
                yield return $"{name}: the harmonised limits for {own.Group} ({entry.Name}) count only where they are stricter than the general ones, because the supplier's sheet has another class there without limits: {classes} ({other.Name}).";
            }
        }
    }

    private static bool Speaks(Source source, string group) => source.Claims.Any(c => c.Category.Group == group);

    private static double LimitOf(Source source, HazardCategory category) =>
        source.Limits.Where(l => l.Category == category).Min(l => l.From.Value);

    private static SubstanceHazard FromLimits(OwnLimits limits)
    {
        HazardCategory worst = limits.Limits.MinBy(l => l.Category.Severity)!.Category;
        return new SubstanceHazard(worst, worst.Statement, "", 1, true, "its own limit, without a class of its own");
    }

    private static SubstanceHazard Choose(ComposedIngredient ingredient, List<Word> words, string later, List<string> differences)
    {
        Word worst = Worst(words);
        HazardCategory category = worst.Claim.Category;
        Word? supplier = words.Where(w => w.Source.Standing == Standing.Supplier).MinBy(w => w.Claim.Category.Severity);
        if (worst.Source.Standing != Standing.Supplier && (supplier is null || supplier.Claim.Category.Severity > category.Severity))
        {
            string said = supplier is null ? "does not have it" : $"says {supplier.Claim.Category.Code}";
            string used = worst.Source.Standing switch
            {
                Standing.Binding => "is used",
                Standing.Elsewhere => $"is used as evidence ({later})",
                _ => "is used as evidence, though it does not bind here",
            };
            differences.Add(
                $"{ingredient.Identity.Name}: the harmonised class {category.Code} ({worst.Source.Name}) {used}; the supplier's sheet {said}."
            );
        }
        else if (words.Where(w => w.Source.Standing == Standing.Supplier).Select(w => w.Claim.Category).Distinct().Count() > 1)
        {
            differences.Add(
                $"{ingredient.Identity.Name}: the sheets disagree; the worst class, {category.Code} ({worst.Source.Name}), is used."
            );
        }

        // That a harmonised class ends a harsher word of the supplier is not read into it: the stricter reading.
        List<Word> ofTheLaw = [.. words.Where(w => w.Source.Standing != Standing.Supplier)];
        if (worst.Source.Standing == Standing.Supplier && ofTheLaw.Count > 0)
        {
            Word law = Worst(ofTheLaw);
            differences.Add(
                $"{ingredient.Identity.Name}: the supplier's class {category.Code} ({worst.Source.Name}) is harsher than the harmonised class {law.Claim.Category.Code} ({law.Source.Name}), and is kept."
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

        if (acute || chronic)
        {
            differences.AddRange(FactorDifferences(ingredient.Identity.Name, category, words, s => acute ? s.AcuteM : s.ChronicM));
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

    // A sheet's M-factor beside an entry's, where both give the class that counts.
    private static IEnumerable<string> FactorDifferences(
        string name,
        HazardCategory category,
        List<Word> words,
        Func<Source, double?> factor
    )
    {
        List<Source> giving = [.. words.Where(w => w.Claim.Category == category).Select(w => w.Source).Where(s => factor(s) is not null)];
        Source? law = giving.Where(s => s.Standing != Standing.Supplier).MaxBy(factor);
        Source? sheet = giving.Where(s => s.Standing == Standing.Supplier).MaxBy(factor);
        if (law is null || sheet is null || factor(law) is not { } ofTheLaw || factor(sheet) is not { } said || said.Equals(ofTheLaw))
        {
            yield break;
        }

        yield return said > ofTheLaw
            ? $"{name}: the supplier's M-factor for {category.Code}, {Figures.Plain(said)} ({sheet.Name}), is higher than the harmonised {Figures.Plain(ofTheLaw)} ({law.Name}), and is kept."
            : $"{name}: the harmonised M-factor for {category.Code}, {Figures.Plain(ofTheLaw)} ({law.Name}), is used; the supplier's sheet says {Figures.Plain(said)}.";
    }

    private static Word Worst(IEnumerable<Word> words) =>
        words.OrderBy(w => w.Claim.Category.Severity).ThenByDescending(w => w.Source.Standing).First();

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

    // Whose word goes first where several say the same.
    private enum Standing
    {
        Supplier,
        Elsewhere,
        Evidence,
        Binding,
    }

    private sealed record Source(
        IReadOnlyList<HazardClaim> Claims,
        IReadOnlyList<SpecificLimit> Limits,
        double? AcuteM,
        double? ChronicM,
        string Name,
        Standing Standing
    );

    private sealed record Word(HazardClaim Claim, Source Source);
}
