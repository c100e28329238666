using Chandlery.Core.Declared;
using Chandlery.Core.Making.Layouts;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making;

/// <summary>How the wicks stand.</summary>
public sealed record WickPlan
{
    // Common practice, no source: wicks of a wide candle stand 3 to 4 cm apart unless the wick maker says otherwise.
    private static readonly WickSpacing Common = new(new Millimetres(30), new Millimetres(40));

    /// <summary>How many in each piece of the vessel.</summary>
    public required int Count { get; init; }

    /// <summary>How many pieces the vessel is made of.</summary>
    public required int Pieces { get; init; }

    /// <summary>How many in all.</summary>
    public int Whole => Count * Pieces;

    /// <summary>The layout with the greatest free circle around every wick; null when the vessel's inside is not declared.</summary>
    public required WickLayout? Best { get; init; }

    /// <summary>The best layout in rings or rows; null where there is none.</summary>
    public required WickLayout? Symmetric { get; init; }

    /// <summary>The spacing that is asked for.</summary>
    public required WickSpacing Asked { get; init; }

    /// <summary>True when the wick maker gives that spacing, false when it is common practice without a source.</summary>
    public required bool IsMakers { get; init; }

    /// <summary>Whether there are too many or too few.</summary>
    public required WickVerdict Verdict { get; init; }

    /// <summary>In words.</summary>
    public required string Note { get; init; }

    /// <summary>Distance between the closest neighbours in the best layout; null for one wick or when the inside is not declared.</summary>
    public Millimetres? Spacing => Best?.Neighbours;

    /// <summary>True when the symmetric layout leaves as much room as the best one does.</summary>
    public bool IsSymmetricBest =>
        Best is { } best && Symmetric is { } rings && rings.FreeRadius.Value >= best.FreeRadius.Value * (1 - SameRoom);

    private const double SameRoom = 1e-4;

    /// <summary>The plan for wicks in a vessel.</summary>
    /// <param name="wicks">The wicks.</param>
    /// <param name="vessel">The vessel.</param>
    public static WickPlan Of(Wicks wicks, Vessel vessel)
    {
        WickSpacing asked = wicks.Spacing ?? Common;
        Floor? floor = vessel.Inner is { } inner ? Floor.Of(inner.Section) : null;
        WickLayout? best = floor is null || wicks.Count == 0 ? null : LayoutFinder.Best(floor, wicks.Count);
        WickVerdict verdict =
            best is null ? WickVerdict.NotKnown
            : best.Neighbours is not { } apart ? WickVerdict.Fits
            : apart.Value < asked.From.Value ? WickVerdict.TooMany
            : apart.Value > asked.To.Value ? WickVerdict.FarApart
            : WickVerdict.Fits;
        var plan = new WickPlan
        {
            Count = wicks.Count,
            Pieces = vessel.Pieces,
            Best = best,
            Symmetric = floor is null || wicks.Count == 0 ? null : RingLayout.Best(floor, wicks.Count),
            Asked = asked,
            IsMakers = wicks.Spacing is not null,
            Verdict = verdict,
            Note = "",
        };
        return plan with { Note = plan.InWords(vessel) };
    }

    private string InWords(Vessel vessel)
    {
        if (Count == 0)
        {
            return "It has no wicks.";
        }

        return Pieces > 1 ? $"In each of the {Pieces} pieces {(Count == 1 ? "one" : $"{Count}")}. {InOne(vessel)}" : InOne(vessel);
    }

    private string InOne(Vessel vessel)
    {
        if (Best is not { } best)
        {
            return "The vessel's inside is not declared, so the spacing is not known.";
        }

        if (best.Neighbours is not { } apart)
        {
            return $"One wick in the middle of {Figures.Rounded(vessel.Inner!.Section.Across.Value, 1)} mm: choose its size by the wick maker's table for this wax, and test.";
        }

        string source = IsMakers ? "The wick maker asks for" : "Common practice (no source), where the wick maker says nothing, is";
        string stand =
            $"Laid out with the greatest free circle around each they stand {apart.InCentimetres} apart and {best.Wall.InCentimetres} from the wall. {source} {Asked.From.InCentimetres} to {Asked.To.InCentimetres} between wicks.";
        return Verdict switch
        {
            WickVerdict.TooMany =>
                $"{stand} That is closer: flames that stand close run into one fire, and no other layout gives them more room. Use fewer wicks.",
            WickVerdict.FarApart =>
                $"{stand} That is farther: wax between them may stay hard. It is no reason for more flames: more wicks make a larger fire, and how many and how thick they may be is the wick maker's to say, and a burn test's to confirm.",
            _ => $"{stand} That fits; a burn test confirms it.",
        };
    }
}
