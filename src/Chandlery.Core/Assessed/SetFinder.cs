using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Yaml;

namespace Chandlery.Core.Assessed;

/// <summary>
/// What follows for a gift set: a set is no mixture of its own, so it is what its products are. It is sold only where each of them may
/// be, and its box bears the labels that cannot be read through it.
/// </summary>
/// <param name="lawbook">The law.</param>
/// <param name="assessments">All assessed products of the maker's folder.</param>
public sealed class SetFinder(Lawbook lawbook, IReadOnlyList<Assessment> assessments)
{
    /// <summary>One sheet for each edition that rules where the set is sold.</summary>
    /// <param name="set">The set.</param>
    /// <param name="problems">Collects places and products that there are not.</param>
    public IReadOnlyList<SetSheet> Of(GiftSet set, Problems problems)
    {
        var places = new List<Place>();
        foreach (Written<PlaceName> code in set.SoldIn)
        {
            if (lawbook.FindPlace(code.Code) is { } place)
            {
                places.Add(place);
            }
            else
            {
                problems.Add(code.Place, $"There is no edition of the law for the place '{code.Code}'.", lawbook.InsteadOfPlace(code.Code));
            }
        }

        foreach (SetPart part in set.Parts.Where(p => assessments.All(a => a.Candle.Id != p.Product.Id)))
        {
            string near = Suggestion.Nearest(part.Product.Id, [.. assessments.Select(a => a.Candle.Id)]) is { } guess
                ? $"Did you mean '{guess}'?"
                : "Name a product of this folder that can be assessed.";
            problems.Add(part.Product.Place, $"There is no assessed product named '{part.Product.Id}'.", near);
        }

        return problems.None ? [.. places.GroupBy(p => p.EditionId).Select(g => Sheet(set, lawbook.Edition(g.Key), [.. g]))] : [];
    }

    private SetSheet Sheet(GiftSet set, Edition edition, IReadOnlyList<Place> places)
    {
        var lines = new List<SetLine>();
        var findings = new List<Finding>();
        foreach (SetPart part in set.Parts)
        {
            Assessment? product = assessments.FirstOrDefault(a =>
                a.Batch is null && a.Candle.Id == part.Product.Id && a.Edition.Id == edition.Id
            );
            List<string> lacking = [.. places.Where(p => product?.Places.All(own => own.Code != p.Code) != false).Select(p => p.Name)];
            if (lacking.Count > 0)
            {
                findings.Add(
                    new Finding(
                        Gravity.Stop,
                        $"{part.Product.Id} is not declared for sale in {string.Join(", ", lacking)}: add the places to its 'soldIn'.",
                        Citation.None
                    )
                );
            }

            if (product is null)
            {
                continue;
            }

            lines.Add(new SetLine(part.Count, product));
            findings.AddRange(
                product.Findings.Where(f => f.Gravity == Gravity.Stop).Select(f => f with { What = $"{product.Candle.Name}: {f.What}" })
            );
        }

        IReadOnlyList<SetLine> onBox = set.IsSeenThrough ? [] : [.. lines.Where(l => l.HasHazardLabel)];
        if (onBox.Count > 0)
        {
            findings.Add(
                new Finding(
                    Gravity.Look,
                    $"The labels inside cannot be read through the box, so it bears them too, each in full: {string.Join(", ", onBox.Select(l => l.Product.Candle.Name))}.",
                    edition.SmallPackages.OuterClause
                )
            );
        }

        return new SetSheet(set, edition, places, lines, onBox, findings);
    }
}
