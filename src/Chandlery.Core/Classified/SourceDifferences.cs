using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Classified;

/// <summary>Says where a supplier's sheet and the table of harmonised classes say different things of a substance, and which counts.</summary>
/// <param name="name">The substance's name.</param>
internal sealed class SourceDifferences(string name)
{
    /// <summary>Differences in the class of one group.</summary>
    /// <param name="words">What everybody says of the group.</param>
    /// <param name="worst">The word that counts.</param>
    /// <param name="later">How a class that is law elsewhere is cited.</param>
    public IEnumerable<string> OfClass(IReadOnlyList<Word> words, Word worst, string later)
    {
        HazardCategory category = worst.Claim.Category;
        List<Word> sheets = [.. words.Where(w => w.Source.IsSheet)];
        Word? supplier = sheets.MinBy(w => w.Claim.Category.Severity);
        if (!worst.Source.IsSheet && (supplier is null || supplier.Claim.Category.Severity > category.Severity))
        {
            string said = supplier is null ? "does not have it" : $"says {supplier.Claim.Category.Code}";
            string used = worst.Source.Standing switch
            {
                Standing.Binding => "is used",
                Standing.Elsewhere => $"is used as evidence ({later})",
                _ => "is used as evidence, though it does not bind here",
            };
            yield return $"{name}: the harmonised class {category.Code} ({worst.Source.Name}) {used}; the supplier's sheet {said}.";
        }
        else if (sheets.Select(w => w.Claim.Category).Distinct().Count() > 1)
        {
            yield return $"{name}: the sheets disagree; the worst class, {category.Code} ({worst.Source.Name}), is used.";
        }

        // That a harmonised class ends a harsher word of the supplier is not read into it: the stricter reading.
        if (worst.Source.IsSheet && words.Any(w => !w.Source.IsSheet))
        {
            Word law = Word.Worst(words.Where(w => !w.Source.IsSheet));
            yield return $"{name}: the supplier's class {category.Code} ({worst.Source.Name}) is harsher than the harmonised class {law.Claim.Category.Code} ({law.Source.Name}), and is kept.";
        }
    }

    /// <summary>A sheet's M-factor beside an entry's, where both give the class that counts.</summary>
    /// <param name="category">The class that counts.</param>
    /// <param name="words">What everybody says of its group.</param>
    /// <param name="factor">The M-factor that somebody gives for the class; null for none.</param>
    public IEnumerable<string> OfFactor(HazardCategory category, IReadOnlyList<Word> words, Func<HazardSource, double?> factor)
    {
        List<HazardSource> giving = [.. words.Where(w => w.Claim.Category == category).Select(w => w.Source)];
        (HazardSource? law, HazardSource? sheet) = HighestOfEach(giving, factor);
        if (law is null || sheet is null || factor(law) is not { } ofTheLaw || factor(sheet) is not { } said || said.Equals(ofTheLaw))
        {
            yield break;
        }

        yield return said > ofTheLaw
            ? $"{name}: the supplier's M-factor for {category.Code}, {Figures.Plain(said)} ({sheet.Name}), is higher than the harmonised {Figures.Plain(ofTheLaw)} ({law.Name}), and is kept."
            : $"{name}: the harmonised M-factor for {category.Code}, {Figures.Plain(ofTheLaw)} ({law.Name}), is used; the supplier's sheet says {Figures.Plain(said)}.";
    }

    /// <summary>Where a sheet's limits are others than an entry's, and where an entry's are not followed upwards.</summary>
    /// <param name="sources">All who speak of the substance.</param>
    /// <param name="limits">The limits that count.</param>
    public IEnumerable<string> OfLimits(IReadOnlyList<HazardSource> sources, IReadOnlyList<OwnLimits> limits) =>
        limits
            .SelectMany(own => own.Limits.Select(l => OfLimit(sources, l.Category)).Append(NotFollowed(sources, own.Group)))
            .OfType<string>();

    private string? OfLimit(IReadOnlyList<HazardSource> sources, HazardCategory category)
    {
        // The lower a limit, the sooner it counts: the highest of its negatives.
        (HazardSource? law, HazardSource? sheet) = HighestOfEach(sources, s => -s.LimitOf(category));
        if (law?.LimitOf(category) is not { } ofTheLaw || sheet?.LimitOf(category) is not { } said || said.Equals(ofTheLaw))
        {
            return null;
        }

        return said < ofTheLaw
            ? $"{name}: the supplier's limit for {category.Code}, {Figures.Plain(said)} % ({sheet.Name}), is lower than the harmonised {Figures.Plain(ofTheLaw)} % ({law.Name}), and is kept."
            : $"{name}: the harmonised limit for {category.Code}, {Figures.Plain(ofTheLaw)} % ({law.Name}), is used; the supplier's sheet says {Figures.Plain(said)} %.";
    }

    // Only a sheet that has another class of the group is in the way of an entry's limits.
    private string? NotFollowed(IReadOnlyList<HazardSource> sources, string group)
    {
        HazardSource? entry = sources.FirstOrDefault(s => s.Standing == Standing.Binding && s.GivesLimits(group) && s.Speaks(group));
        HazardSource? other = sources.FirstOrDefault(s =>
            s.IsSheet && s.Speaks(group) && !s.GivesLimits(group) && !SourceLimits.AreThoseOfTheEntry(s, group, sources)
        );
        return entry is null || other is null
            ? null
            : $"{name}: the harmonised limits for {group} ({entry.Name}) count only where they are stricter than the general ones, because the supplier's sheet has another class there without limits: {string.Join(", ", other.ClassesOf(group).Select(c => c.Category.Code))} ({other.Name}).";
    }

    private static (HazardSource? Law, HazardSource? Sheet) HighestOfEach(
        IReadOnlyList<HazardSource> sources,
        Func<HazardSource, double?> figure
    )
    {
        List<HazardSource> giving = [.. sources.Where(s => figure(s) is not null)];
        return (giving.Where(s => !s.IsSheet).MaxBy(figure), giving.Where(s => s.IsSheet).MaxBy(figure));
    }
}
