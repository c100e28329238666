using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Core.Making;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Templates;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.BenchSheets;

/// <summary>The sheet that hangs at the bench while candles are made.</summary>
public sealed class BenchSheetPaper() : PaperKind("bench-sheet", "Bench sheet")
{
    /// <inheritdoc/>
    public override bool IsPerCandle => true;

    /// <inheritdoc/>
    public override bool TakesCount => true;

    /// <summary>False: it depends on how many candles are made on a day.</summary>
    public override bool IsInDossier => false;

    /// <inheritdoc/>
    protected override PaperOutcome Make(PaperRequest request, Problems problems)
    {
        Assessment a = request.Assessment;
        if (a.Kind.State == PhysicalState.Liquid)
        {
            return Mixing(request, problems) is { } mixing
                ? Lay(request, Liquid(a, mixing), problems)
                : MissingPaper.Because(problems, isDue: true);
        }

        return Pouring(request, problems) is { } plan
            ? Lay(request, a.Kind.Burns ? View(a, plan) : Melt(a, plan), problems)
            : MissingPaper.Because(problems, isDue: true);
    }

    /// <summary>What the sheet says to weigh, without drawing it; null with problems.</summary>
    public static BenchLine? Line(PaperRequest request, Problems problems)
    {
        Assessment a = request.Assessment;
        return a.Kind.State == PhysicalState.Liquid
            ? Mixing(request, problems) is { } mixing
                ? BenchLine.Of(a.Id, mixing)
                : null
            : Pouring(request, problems) is { } plan
                ? BenchLine.Of(a.Id, plan)
                : null;
    }

    private static MixingPlan? Mixing(PaperRequest request, Problems problems)
    {
        Assessment a = request.Assessment;
        if (request.Settings.Pour.IsChosen)
        {
            problems.Add(
                a.Candle.Place,
                $"{a.Candle.Name} is a {a.Kind.Name}, which is mixed cold and filled at once: there is no second pour, no other size from the same melt and no melt left over to plan.",
                "Leave out --gap, --also, --leftover and --leftover-of."
            );
            return null;
        }

        return MixingPlan.Make(a, request.Settings.Count, request.Settings.WastePercent);
    }

    private static PouringPlan? Pouring(PaperRequest request, Problems problems) =>
        PourOrders.Read(request, problems) is { } order ? PouringPlan.Make(request.Assessment, request.Wax, order) : null;

    private static PaperOutcome Lay(PaperRequest request, ITemplateView view, Problems problems)
    {
        Assessment a = request.Assessment;
        PaperDocument? sheet = request.Shop.Read(view, problems) is { } document
            ? ManyPages.Lay(
                document,
                request.Shop,
                (_, _) => ManyPages.Head(a.Candle.Name, "Bench sheet"),
                (page, count) => [ManyPages.Line(a.Maker.Name, $"{a.Id} · page {page} of {count}")]
            )
            : null;
        return Outcome(sheet, problems);
    }

    private static LiquidBenchSheetView Liquid(Assessment a, MixingPlan plan)
    {
        string what = a.Kind.Say(plan.Count == 1 ? "candle" : "candles");
        string each = a.Candle.NetVolume is { } volume ? volume.ToString() : a.Candle.NetMass.ToString();
        return new LiquidBenchSheetView(
            a.Candle.Name,
            $"Bench sheet for {plan.Count} {what} of {each}, {Weighed(plan.Total)} in all with {Figures.Plain(plan.WastePercent)} % for what stays in the vessel.",
            [.. a.Findings.Where(f => f.Gravity == Gravity.Stop).Select(f => f.What)],
            [.. plan.Portions.Select(Portion)],
            a.Composition.Recipe.Oils.Count > 0
                ? $"Load: {FigureFormat.English.About(a.Composition.Recipe.MeltLoadOfWax)} of the base, which is {FigureFormat.English.About(a.Composition.Recipe.Load)} of the finished liquid."
                : "",
            plan.FlashPoints,
            $"{a.Vessel.Name}, {a.Vessel.Brimful} to the brim"
        );
    }

    private static MeltBenchSheetView Melt(Assessment a, PouringPlan plan)
    {
        string what = a.Kind.Say(plan.Count == 1 ? "candle" : "candles");
        return new MeltBenchSheetView
        {
            Name = a.Candle.Name,
            Making =
                $"Bench sheet for {plan.Count} {what} of {a.Candle.NetMass}, {Weighed(plan.Total)} in all with {Figures.Plain(plan.WastePercent)} % for what stays in the jug.",
            Stops = [.. a.Findings.Where(f => f.Gravity == Gravity.Stop).Select(f => f.What)],
            First = [.. plan.FirstPour.Select(Portion)],
            Second = [.. plan.TopUp.Select(Portion)],
            Sizes = [.. plan.Sizes.Select(Size).Select(s => s with { Gap = a.Kind.Say(s.Gap) })],
            HasSecond = plan.Sizes.Any(s => s.TopUpEach.Value > 0) ? "yes" : "",
            Load =
                a.Composition.Recipe.Oils.Count > 0
                    ? $"Load: {FigureFormat.English.About(a.Composition.Recipe.MeltLoadOfWax)} of the wax, which is {FigureFormat.English.About(a.Composition.Recipe.MeltLoadOfCandle)} of the melt and {FigureFormat.English.About(a.Composition.Recipe.Load)} of the finished {a.Kind.Say("candle")}."
                    : "",
            Temperatures = Temperatures(plan),
            Times = Times(plan),
            Shell = string.Join(' ', Shell(a, plan)),
        };
    }

    private static IEnumerable<string> Shell(Assessment a, PouringPlan plan)
    {
        yield return $"{a.Vessel.Name} ({a.Vessel.Material}), {a.Vessel.Brimful} to the brim by water. {plan.Fill.Note}";
        if (plan.Fill.ShrinkPercent is { } shrink)
        {
            yield return $"The wax shrinks by about {Figures.Rounded(shrink, 1)} % on setting.";
        }
    }

    private static IReadOnlyList<TemperatureView> Temperatures(PouringPlan plan) =>
        [
            .. plan.Temperatures.Select(t => new TemperatureView(
                t.Step,
                t.Temperature is { } c ? $"{Figures.Plain(c.Value)} °C" : "not declared",
                t.Note
            )),
        ];

    private static IReadOnlyList<TimeView> Times(PouringPlan plan) => [.. plan.Times.Select(t => new TimeView(t.Step, t.Time, t.Source))];

    private static BenchSheetView View(Assessment a, PouringPlan plan) =>
        new()
        {
            Name = a.Candle.Name,
            Count = $"{plan.Count}",
            Net = a.Candle.NetMass.ToString(),
            Total = Weighed(plan.Total),
            Waste = Figures.Plain(plan.WastePercent),
            Stops = [.. a.Findings.Where(f => f.Gravity == Gravity.Stop).Select(f => f.What)],
            First = [.. plan.FirstPour.Select(Portion)],
            Second = [.. plan.TopUp.Select(Portion)],
            Sizes = [.. plan.Sizes.Select(Size)],
            HasSecond = plan.Sizes.Any(s => s.TopUpEach.Value > 0) ? "yes" : "",
            LoadWax = a.Composition.Recipe.Oils.Count > 0 ? FigureFormat.English.About(a.Composition.Recipe.MeltLoadOfWax) : "",
            LoadMelt = FigureFormat.English.About(a.Composition.Recipe.MeltLoadOfCandle),
            LoadCandle = FigureFormat.English.About(a.Composition.Recipe.Load),
            Temperatures = Temperatures(plan),
            Times = Times(plan),
            Into = a.Vessel.IsMould ? "mould" : "vessel",
            Vessel = a.Vessel.IsMould
                ? $"A mould of the candle's size, {a.Vessel.Brimful}"
                : $"{a.Vessel.Name} ({a.Vessel.Material}), {a.Vessel.Brimful} to the brim by water{(plan.Fill.ByGeometry is { } g ? $", {new Millilitres(Math.Round(g.Value))} by its size" : "")}",
            Fill = plan.Fill.Note,
            Shrink = plan.Fill.ShrinkPercent is { } shrink ? $"{shrink:0.0}" : "",
            NetForRoom = plan.Fill.NetForRoom is { } net ? Weighed(net) : "",
            WickCount = $"{plan.Wicks.Whole}",
            WickKind = a.Candle.Wicks.Kind ?? "",
            WickNote = plan.Wicks.Note,
        };

    private static SizeView Size(SizePlan s) =>
        new(
            s.Name,
            s.Pieces > 1 ? $"{s.Count} of {s.Pieces}" : $"{s.Count}",
            Poured(s.FirstInPiece, s),
            s.TopUpEach.Value > 0 ? Poured(s.TopUpInPiece, s) : "-",
            s.Gap
        );

    // What the jug pours into one vessel; of a box of several, what they come to together too.
    private static string Poured(Grams piece, SizePlan s) =>
        s.Pieces > 1 ? $"{Weighed(piece)} ({s.Pieces}: {Weighed(new Grams(piece.Value * s.Pieces))})" : Weighed(piece);

    private static PortionView Portion(Portion p) => new(p.Name, p.Kind, Weighed(p.Mass));

    // A kitchen scale shows a gram, a pocket scale a tenth: small amounts keep their tenths.
    private static string Weighed(Grams mass) => mass.Value >= 1000 ? $"{mass.Value:0} g" : $"{mass.Value:0.0} g";
}
