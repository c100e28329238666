using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.SecondCalculation;

/// <summary>Asks the program about a mixture. All that the second calculation knows of the program is here.</summary>
internal static class ProgramAnswer
{
    private const double LeastFillerPercent = 1e-9;

    private static readonly TextPlace Place = new("second calculation", 1, 1);

    /// <summary>The program's answer under one of its editions of the law.</summary>
    public static ComparedAnswer To(GivenMixture mixture, string edition)
    {
        PhysicalState state = mixture.Liquid is null ? PhysicalState.Solid : PhysicalState.Liquid;
        Verdict verdict = TestLaw.Law(TestLaw.Lawbook.Edition(edition)).ForState(state).Judge(Composed(mixture));
        LabelElements label = verdict.Label;
        return new ComparedAnswer(
            Sorted(verdict.Classification.Classes.Select(c => c.Category.Code)),
            new SecondLabel(
                Sorted(label.Pictograms.Select(p => p.Text)),
                label.SignalWord?.Text ?? "",
                Sorted(label.Hazard.Concat(label.Supplemental).Select(s => s.Text))
            ),
            [.. label.Named.Select(n => n.Name)],
            verdict.Classification.UnknownToxicity?.Share.Value,
            verdict.Classification.UnknownAquatic?.Share.Value,
            verdict.FlammabilityUnknown is not null
        );
    }

    /// <summary>The mixture as a wax without oil; what is neither a substance nor undeclared is a harmless filler.</summary>
    private static Composition Composed(GivenMixture mixture)
    {
        double filler = 100 - mixture.Substances.Sum(s => s.Percent) - mixture.UndeclaredPercent;
        List<Ingredient> lines = [.. mixture.Substances.Select(Line)];
        if (filler > LeastFillerPercent)
        {
            lines.Add(TestLaw.Line("filler", filler, []));
        }

        var wax = new Wax
        {
            Id = "w",
            Place = Place,
            Name = "mixture",
            Supplier = "nobody",
            Ingredients = lines,
            Blend = [],
            HighestLoad = null,
            SolidDensity = null,
            LiquidDensity = null,
        };
        MassPercent none = MassPercent.Zero;
        return Composer.Compose(new Recipe([], [new WaxShare(wax, MassPercent.Whole)], [], none, none, none, none)) with
        {
            Liquid = mixture.Liquid is { } liquid ? Facts(liquid) : null,
        };
    }

    private static LiquidFacts Facts(GivenLiquid liquid) =>
        new()
        {
            Density = null,
            FlashPoint = liquid.Flash is { } flash ? new FlashPoint(new Celsius(flash.Celsius), flash.Above, flash.Method) : null,
            Boiling = liquid.Boiling is { } boiling ? new Celsius(boiling) : null,
            SustainsCombustion = liquid.SustainsCombustion,
            Viscosity = liquid.Viscosity is { } viscosity ? new SquareMillimetresPerSecond(viscosity) : null,
            FormsFlammableVapour = liquid.FormsVapour,
            Classes =
                liquid.Class is null ? null
                : liquid.Class == GivenLiquid.NotClassified ? []
                : [TestLaw.Claim(liquid.Class)],
            Document = "report",
        };

    private static Ingredient Line(GivenSubstance substance) =>
        TestLaw.Line(substance.Name, substance.Percent, []) with
        {
            Claims = substance.Classes is null ? null : [.. substance.Classes.Select(TestLaw.Claim)],
            SpecificLimits =
            [
                .. substance.Limits.Select(l => new SpecificLimit(
                    TestLaw.Claim(l.Category).Category,
                    new MassPercent(l.FromPercent),
                    l.BelowPercent is { } below ? new MassPercent(below) : null
                )),
            ],
            AcuteM = substance.AcuteM,
            ChronicM = substance.ChronicM,
            Toxicity = [.. substance.Estimates.Select(e => new ToxicityEstimate(Route(e.Form), e.Figure))],
        };

    private static ExposureRoute Route(GivenForm form) =>
        form switch
        {
            GivenForm.Oral => ExposureRoute.Oral,
            GivenForm.Dermal => ExposureRoute.Dermal,
            GivenForm.Gas => ExposureRoute.InhalationGas,
            GivenForm.Vapour => ExposureRoute.InhalationVapour,
            _ => ExposureRoute.InhalationDust,
        };

    private static List<string> Sorted(IEnumerable<string> codes) => [.. codes.Order(StringComparer.Ordinal)];
}
