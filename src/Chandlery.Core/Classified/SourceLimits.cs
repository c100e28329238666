using Chandlery.Core.Hazards;

namespace Chandlery.Core.Classified;

/// <summary>Decides which specific concentration limits of a substance count, and whether they may be milder than the general ones.</summary>
internal static class SourceLimits
{
    /// <summary>The limits that count, by hazard group: of each category the lowest that anybody gives.</summary>
    /// <param name="sources">All who speak of the substance.</param>
    public static IEnumerable<OwnLimits> ByGroup(IReadOnlyList<HazardSource> sources) =>
        sources
            .SelectMany(s => s.Limits)
            .GroupBy(l => l.Category.Group)
            .Select(group => new OwnLimits(
                group.Key,
                [.. group.GroupBy(l => l.Category).Select(g => g.MinBy(l => l.From.Value)!)],
                MilderCount(group.Key, sources)
            ));

    /// <summary>
    /// True for a sheet all of whose classes of the group are those of an entry that binds and gives limits, or plainly milder: the
    /// entry's limits are its own too.
    /// </summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="group">The hazard group.</param>
    /// <param name="sources">All who speak of the substance.</param>
    public static bool AreThoseOfTheEntry(HazardSource sheet, string group, IReadOnlyList<HazardSource> sources)
    {
        List<HazardClaim> law =
        [
            .. sources.Where(s => s.Standing == Standing.Binding && s.GivesLimits(group)).SelectMany(s => s.ClassesOf(group)),
        ];
        return sheet.IsSheet && law.Count > 0 && sheet.ClassesOf(group).All(said => law.Exists(l => IsCovered(said, l)));
    }

    // Those who give a class of the group must all give a limit with it; where nobody does, everybody must. An entry that binds gives its
    // limits together with its class (CLP Art. 4(3), Art. 10(1)): a sheet that repeats the class need not repeat them. A sheet with
    // another class must, because nothing says that the entry's limits hold for that one too: the stricter reading.
    private static bool MilderCount(string group, IReadOnlyList<HazardSource> sources)
    {
        List<HazardSource> speaking = [.. sources.Where(s => s.Speaks(group))];
        return (speaking.Count > 0 ? speaking : sources).All(s => s.GivesLimits(group) || AreThoseOfTheEntry(s, group, sources));
    }

    // Letters of a statement (H360D) and organs narrow an entry to one effect: a sheet that does not name the same one may mean another.
    private static bool IsCovered(HazardClaim said, HazardClaim law) =>
        said.Category.Severity >= law.Category.Severity
        && (said.Statement == law.Statement || law.Statement == law.Category.Statement)
        && (said.Organs == law.Organs || law.Organs.Length == 0);
}
