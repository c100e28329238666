using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Making;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.BenchSheets;

/// <summary>Turns what the user chose of a pour into an order that can be planned.</summary>
internal static class PourOrders
{
    /// <summary>The order; null with problems when its candles do not go together.</summary>
    public static PourOrder? Read(PaperRequest request, Problems problems)
    {
        PourSettings chosen = request.Settings.Pour;
        Recipe own = request.Assessment.Composition.Recipe;
        var sizes = new List<PourSize>();
        foreach ((string id, int count) in chosen.Also)
        {
            if (Size(request, id, count, problems) is not { } size)
            {
                continue;
            }

            if (MeltParts.WhyNotOne(own, size.Recipe) is { } why)
            {
                problems.Add(size.Candle.Place, $"{size.Candle.Name} and {request.Assessment.Candle.Name} are not of one melt: {why}");
            }

            sizes.Add(size);
        }

        PourOrder order = new(request.Settings.Count, request.Settings.WastePercent) { Gap = chosen.Gap, Also = sizes };
        if (chosen.Leftover is not { } mass || !problems.None)
        {
            return problems.None ? order : null;
        }

        LeftoverMelt? leftover = Leftover(request, mass, problems);
        var first = new PourSize(request.Assessment.Candle, request.Assessment.Vessel, own, request.Settings.Count);
        if (leftover?.WhyNot(own, PouringPlan.MeltFor(sizes.Prepend(first), request.Settings.WastePercent)) is { } refused)
        {
            problems.Add(request.Assessment.Candle.Place, $"The melt left over of {leftover.Name} cannot be used for this. {refused}");
        }

        return problems.None ? order with { Leftover = leftover } : null;
    }

    private static LeftoverMelt? Leftover(PaperRequest request, Grams mass, Problems problems)
    {
        if (request.Settings.Pour.LeftoverOf is not { } id)
        {
            return new LeftoverMelt(request.Assessment.Candle.Name, request.Assessment.Composition.Recipe, mass);
        }

        return Size(request, id, 1, problems) is { } size ? new LeftoverMelt(size.Candle.Name, size.Recipe, mass) : null;
    }

    private static PourSize? Size(PaperRequest request, string id, int count, Problems problems)
    {
        var reference = new Reference(id, request.Assessment.Candle.Place);
        return
            request.Catalogue.Find<Candle>(reference, problems) is { } candle
            && VesselOf(request, candle, problems) is { } vessel
            && RecipeMaker.FromPlan(candle, request.Catalogue, problems) is { } recipe
            ? new PourSize(candle, vessel, recipe, count)
            : null;
    }

    private static Vessel? VesselOf(PaperRequest request, Candle candle, Problems problems)
    {
        if (candle.Vessel is { } named)
        {
            return request.Catalogue.Find<Vessel>(named, problems);
        }

        problems.Add(candle.Place, $"{candle.Name} is poured into no vessel, so it is not poured with others.");
        return null;
    }
}
