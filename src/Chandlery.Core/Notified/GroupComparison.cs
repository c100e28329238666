using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Notified;

/// <summary>Whether two candles may be told to the poison centres in one group: nothing differs but a little perfume.</summary>
public static class GroupComparison
{
    /// <summary>Whether they differ in perfumes alone, and those come to no more than allowed in either.</summary>
    public static bool DifferInLittlePerfumeAlone(GroupSubmissionRules rules, Recipe one, Recipe other) =>
        Have(one.Waxes, other.Waxes, w => w.Wax.Id, w => w.Share)
        && Have(one.Extras, other.Extras, e => e.Extra.Id, e => e.Share)
        && !Differing(one, other).Exceeds(rules.DifferingPerfumesUpTo)
        && !Differing(other, one).Exceeds(rules.DifferingPerfumesUpTo);

    /// <summary>Whether they have the same classes in the areas that count.</summary>
    public static bool HaveSameClasses(GroupSubmissionRules rules, Classification one, Classification other) =>
        Classes(rules, one).SetEquals(Classes(rules, other));

    private static HashSet<string> Classes(GroupSubmissionRules rules, Classification classification) =>
        [.. classification.Classes.Where(c => rules.SameClassesFor.Contains(c.Category.Area)).Select(c => c.Category.Code)];

    // An oil that both have at the same share is none in which they differ.
    private static MassPercent Differing(Recipe of, Recipe from) =>
        new(of.Oils.Where(o => !from.Oils.Any(f => f.Oil.Id == o.Oil.Id && IsSame(f.Share, o.Share))).Sum(o => o.Share.Value));

    private static bool Have<T>(IReadOnlyList<T> ours, IReadOnlyList<T> theirs, Func<T, string> id, Func<T, MassPercent> share) =>
        ours.Count == theirs.Count && ours.All(o => theirs.Any(t => id(t) == id(o) && IsSame(share(t), share(o))));

    private static bool IsSame(MassPercent a, MassPercent b) => !a.Exceeds(b) && !b.Exceeds(a);
}
