using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Making;
using Chandlery.Workbench.Answers;
using Chandlery.Workbench.Desks;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>What is weighed and minded at the bench for a number of candles.</summary>
internal static class BenchEndpoint
{
    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Post("/api/bench", PageJson.Default.DeskRequest, request => Answer(rooms.Current, request));

    private static IResult Answer(Workroom room, DeskRequest request)
    {
        if (CandleDesk.Lay(room, request.Id, null, Workroom.Today) is not { } desk || desk.Form.Declared is not Candle candle)
        {
            return OnDesk.Missing;
        }

        if (DeskPapers.Chosen(desk, null) is not { } a)
        {
            return OnDesk.NotAssessed;
        }

        int count = Math.Clamp(request.Paper?.Count ?? 1, 1, PouringPlan.MostCandles);
        PouringPlan plan = PouringPlan.Make(a, desk.WaxOf(a), count, PaperWaste);
        IReadOnlyList<string> codes = [.. desk.Catalogue.OfKind<Batch>().Select(b => b.Code)];
        double? flash = a.Composition.Recipe.Oils.Select(o => o.Oil.FlashPoint?.Temperature.Value).Min();
        return Endpoint.Json(
            new BenchAnswer
            {
                Code = BatchCodes.Next(candle.Name, codes, Workroom.Today),
                FirstPour = [.. Pots(plan.FirstPour, a)],
                TopUp = [.. Pots(plan.TopUp, a)],
                FirstPourEach = plan.Sizes[0].FirstInPiece.Value,
                TopUpEach = plan.Sizes[0].TopUpInPiece.Value,
                Pieces = plan.Sizes[0].Pieces,
                IsTopUpScented = candle.TopUp is ScentedTopUp,
                Temperatures = [.. plan.Temperatures.Select(t => new BenchTemperature(t.Step, t.Temperature?.Value, t.Note))],
                LowestFlashCelsius = flash,
            },
            PageJson.Default.BenchAnswer
        );
    }

    // What stays in the jug (common practice, no source).
    private const double PaperWaste = Chandlery.Paper.Papers.PaperSettings.UsualWastePercent;

    private static IEnumerable<BenchWeight> Pots(IEnumerable<Portion> portions, Assessment a) =>
        portions.Select(p => new BenchWeight(p.Name, p.Kind, IdOf(p, a), p.Mass.Value));

    private static string? IdOf(Portion portion, Assessment a) =>
        a.Composition.Recipe.Oils.FirstOrDefault(o => o.Oil.Name == portion.Name)?.Oil.Id
        ?? a.Composition.Recipe.Extras.FirstOrDefault(e => e.Extra.Name == portion.Name)?.Extra.Id;
}
