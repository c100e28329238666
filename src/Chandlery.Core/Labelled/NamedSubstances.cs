using Chandlery.Core.Classified;
using Chandlery.Core.Law;

namespace Chandlery.Core.Labelled;

/// <summary>
/// Chooses which substances the label names (CLP Art. 18(3)(b) and Annex II, 2.8 in the EU): those chiefly responsible for
/// each grave class, then more of those behind the classes up to the number that is normally enough, and on top every
/// sensitiser that must be named.
/// </summary>
internal static class NamedSubstances
{
    /// <summary>The names, in the order of the classes that they are behind; sensitisers that are behind none come last.</summary>
    public static IReadOnlyList<NamedSubstance> Of(NamingRules rules, Classification classification)
    {
        List<(Substance Substance, ClassResult Class)> behind =
        [
            .. classification.Classes.Where(c => c.Rule.Names.Contains(c.Category)).SelectMany(c => c.Causes.Select(s => (s, c))),
        ];
        HashSet<string> sensitisers = [.. classification.Sensitisers.Select(s => s.Substance.Name)];
        HashSet<string> chosen =
        [
            .. sensitisers,
            // Four names are enough only where they reflect every hazard: no class loses its chief cause to another's fourth.
            .. behind.DistinctBy(b => b.Class).Select(b => b.Substance.Name),
        ];
        int others = chosen.Count(name => !sensitisers.Contains(name));
        foreach ((Substance substance, _) in behind)
        {
            if (others < rules.NormallyEnough && chosen.Add(substance.Name))
            {
                others++;
            }
        }

        return
        [
            .. behind
                .Where(b => chosen.Contains(b.Substance.Name))
                .Select(b => Name(b.Substance, $"behind {b.Class.Category.Code}", rules.Clause, true))
                .Concat(
                    classification
                        .Sensitisers.OrderByDescending(s => s.Working.Value / s.Working.Threshold)
                        .Select(s => Name(s.Substance, s.Working.Sentence, s.Working.Clause, false))
                )
                .DistinctBy(n => n.Name),
        ];

        NamedSubstance Name(Substance substance, string because, Hazards.Citation clause, bool isBehindClass) =>
            new(
                substance.Name,
                substance.Ingredient.Identity.Cas?.Text,
                because,
                clause,
                isBehindClass,
                sensitisers.Contains(substance.Name)
            );
    }
}
