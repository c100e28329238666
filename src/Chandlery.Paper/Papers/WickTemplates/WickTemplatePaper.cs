using Chandlery.Core.Assessed;
using Chandlery.Core.Making;
using Chandlery.Core.Making.Layouts;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.WickTemplates;

/// <summary>The wicks at their true size, to lay under the vessel or into it.</summary>
public sealed class WickTemplatePaper() : PaperKind("wick-template", "Wick template")
{
    /// <inheritdoc/>
    public override bool IsPerCandle => true;

    /// <summary>False: it is for the bench.</summary>
    public override bool IsInDossier => false;

    /// <inheritdoc/>
    protected override PaperOutcome Make(PaperRequest request, Problems problems)
    {
        Assessment a = request.Assessment;
        if (a.Candle.Wicks.Count == 0)
        {
            return new MissingPaper("it has no wicks.", IsDue: false, []);
        }

        if (a.Vessel.Inner is not { } inner)
        {
            return new MissingPaper($"the inside of {a.Vessel.Name} is not declared: add 'inner' to it.", IsDue: false, []);
        }

        var floor = Floor.Of(inner.Section);
        WickPlan plan = WickPlan.Of(a.Candle.Wicks with { Count = request.Settings.Wicks ?? a.Candle.Wicks.Count }, a.Vessel);
        bool hasBoth = plan is { Symmetric: not null, IsSymmetricBest: false };
        var head = new TemplateHead(a.Candle.Name, $"{a.Vessel.Name}, inside", plan.Note);
        List<Scene> pages = [.. Pages(head, hasBoth ? "most room: " : "", floor, plan.Best!)];
        if (hasBoth)
        {
            pages.AddRange(Pages(head, "in rings or rows: ", floor, plan.Symmetric!));
        }

        return new MadePaper(new PaperDocument($"Wick template: {a.Candle.Name}", "en", pages), []);
    }

    private static IReadOnlyList<Scene> Pages(TemplateHead head, string kind, Floor floor, WickLayout layout)
    {
        string apart = layout.Neighbours is { } neighbours ? $"{Tenth(neighbours.Value)} mm apart, " : "";
        string placed =
            $"{kind}{layout.Wicks.Count} wick{(layout.Wicks.Count == 1 ? "" : "s")}, {apart}{Tenth(layout.Wall.Value)} mm from the wall";
        return new TemplateDrawing(head with { Layout = placed }, floor, layout).Pages();
    }

    private static string Tenth(double mm) => FormattableString.Invariant($"{mm:0.0}");
}
