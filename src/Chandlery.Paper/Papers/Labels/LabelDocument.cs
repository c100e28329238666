using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Shapes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>Makes labels.</summary>
public sealed class LabelDocument
{
    private readonly Assessment assessment;
    private readonly LabelFitter fitter;
    private readonly SizeBand band;
    private readonly LabelFormat format;
    private readonly IReadOnlyList<StatementChoice> leftOff;
    private readonly MarkupDocument whole;

    // Few labels are leaflets, so the front is written only where one is tried.
    private readonly Lazy<MarkupDocument?> front;

    private LabelDocument(
        Assessment assessment,
        PaperShop shop,
        IReadOnlyList<StatementChoice> leftOff,
        MarkupDocument whole,
        Func<MarkupDocument?> readFront
    )
    {
        this.assessment = assessment;
        this.leftOff = leftOff;
        this.whole = whole;
        front = new Lazy<MarkupDocument?>(readFront);
        format = assessment.Edition.Formats.On(assessment.AsOf);
        band = format.BandFor(assessment.Vessel.Brimful);
        fitter = new LabelFitter(shop.Symbols, format, band);
    }

    /// <summary>
    /// The label, or null when template or data have problems. Small-package relief is used only where the text does not
    /// fit without it.
    /// </summary>
    public static LabelAttempt? Make(Assessment assessment, PaperShop shop, BurnAdvice advice, Problems problems)
    {
        LabelAttempt? full = Open(assessment, shop, advice, [], problems)?.Choose();
        return full is Misfit && assessment.SmallPackageRelief.Count > 0
            ? Open(assessment, shop, advice, assessment.SmallPackageRelief, problems)?.Choose().Fitted ?? full
            : full;
    }

    /// <summary>How every arrangement that the vessel can carry fares, in the order in which they are tried.</summary>
    public static IReadOnlyList<ArrangementResult>? Arrange(Assessment assessment, PaperShop shop, BurnAdvice advice, Problems problems)
    {
        LabelDocument? document = Open(assessment, shop, advice, [], problems);
        if (document is null)
        {
            return null;
        }

        // A larger leaflet than the first that fits tells nobody anything.
        var results = new List<ArrangementResult>();
        foreach (LabelShape shape in document.Candidates())
        {
            results.Add(new ArrangementResult(document.Try(shape), shape.Holds(document.band.Label)));
            if (results[^1].Attempt is FittedLabel && shape.Request.Form == LabelForm.Leaflet)
            {
                break;
            }
        }

        return results;
    }

    /// <summary>The legal text of a candle, for fitting it into panels of several sizes; null when template or data have problems.</summary>
    /// <param name="assessment">The candle.</param>
    /// <param name="shop">Templates and drawings.</param>
    /// <param name="advice">Burn-safety figures.</param>
    /// <param name="leftOff">Statements that are left off because the package is small.</param>
    /// <param name="problems">Collects what is wrong.</param>
    internal static LabelDocument? OpenPanel(
        Assessment assessment,
        PaperShop shop,
        BurnAdvice advice,
        IReadOnlyList<StatementChoice> leftOff,
        Problems problems
    ) => Open(assessment, shop, advice, leftOff, problems);

    /// <summary>The sizes that the law asks for.</summary>
    internal SizeBand Band => band;

    /// <summary>True when the vessel is too low for the law's size, and the law asks for it only if possible.</summary>
    internal bool IsTooLow =>
        band.IfPossible
        && assessment.Vessel.Outer is { } outer
        && outer.Height.Value < Math.Min(band.Label.Width.Value, band.Label.Height.Value);

    /// <summary>
    /// The legal text in a rectangle; null where it does not fit, or where the law asks for a larger one. Where the law says "if
    /// possible", a vessel that is lower than its size may carry a smaller one.
    /// </summary>
    /// <param name="widthMm">Width.</param>
    /// <param name="heightMm">Height.</param>
    /// <param name="ofLeast">How much larger than the least the letters are to be.</param>
    internal FittedLabel? Panel(double widthMm, double heightMm, double ofLeast) =>
        Panel(Arrangements.Rectangle(new LabelSize(new Millimetres(widthMm), new Millimetres(heightMm)), ""), ofLeast);

    /// <summary>The same for a panel of any shape.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="ofLeast">How much larger than the least the letters are to be.</param>
    internal FittedLabel? Panel(LabelShape shape, double ofLeast)
    {
        // Whether letters of that size fit with the smallest pictograms is soon told; only then is the best arrangement looked for.
        return
            (shape.Holds(band.Label) || IsTooLow)
            && fitter.Holds(whole, shape, ofLeast)
            && FitOne(shape) is { } fitted
            && fitted.XHeight.Value >= (band.XHeight.Value * ofLeast) - 1e-9
            ? fitted
            : null;
    }

    /// <summary>The legal text in a shape; null where it does not fit, or where the law asks for a larger one.</summary>
    internal FittedLabel? InShape(LabelShape shape) => shape.Holds(band.Label) || band.IfPossible ? FitOne(shape) : null;

    private static LabelDocument? Open(
        Assessment assessment,
        PaperShop shop,
        BurnAdvice advice,
        IReadOnlyList<StatementChoice> leftOff,
        Problems problems
    )
    {
        var facts = new LabelFacts(assessment, advice, leftOff.Select(l => l.Code.Text).ToHashSet());
        MarkupDocument? read =
            assessment.Edition.Label.Shows == LabelContent.FireSafety
                ? shop.Read(facts.ConsumerLabel(), problems)
                : shop.Read(facts.Label(), problems);
        return read is { } whole
            ? new LabelDocument(assessment, shop, leftOff, whole, () => shop.Read(facts.LeafletFront(), problems))
            : null;
    }

    private LabelAttempt Choose()
    {
        if (assessment.Candle.Label is { } request)
        {
            return ChooseAsked(Arrangements.Asked(request, assessment.Vessel));
        }

        List<LabelShape> tried = [];
        foreach (LabelShape shape in Candidates())
        {
            if (Fit(shape) is { } fitted)
            {
                return fitted;
            }

            tried.Add(shape);
        }

        LabelShape nearest = tried.MinBy(s => fitter.Missing(whole, s).Height.Value)!;
        return Explain(nearest);
    }

    private LabelAttempt ChooseAsked(LabelShape shape)
    {
        if (!shape.Holds(band.Label) && !band.IfPossible)
        {
            string too =
                $"A label of {shape.Request} is too small: a package of {assessment.Vessel.Brimful} needs at least {band.Label} ({format.Clause}).";
            double short1 = Math.Max(band.Label.Width.Value, band.Label.Height.Value) - Math.Max(shape.WidthMm, shape.HeightMm);
            return new Misfit(shape, new Millimetres(Math.Max(0, short1)), new Millimetres(0), [too]);
        }

        return Try(shape);
    }

    // What holds the law's size comes first. Where the law asks for the size only "if possible", a smaller face of the
    // vessel comes next, and only then a leaflet.
    private IEnumerable<LabelShape> Candidates()
    {
        // What the law puts on a label must be readable when the package stands as usual, which its base is not.
        bool mustBeSeen = assessment.Label.Hazard.Count + assessment.Label.Supplemental.Count + assessment.Label.Pictograms.Count > 0;
        LabelShape[] all =
        [
            .. Arrangements
                .For(assessment.Vessel, assessment.Edition.Formats.OfferedSizes)
                .Where(s => !mustBeSeen || s.Where != LabelShape.OnTheBase),
        ];
        IEnumerable<LabelShape> large = all.Where(s => s.Request.Form != LabelForm.Leaflet && s.Holds(band.Label));
        IEnumerable<LabelShape> small = band.IfPossible ? all.Where(s => s.Request.Form != LabelForm.Leaflet && !s.Holds(band.Label)) : [];
        return large.Concat(small).Concat(all.Where(s => s.Request.Form == LabelForm.Leaflet && s.Holds(band.Label)));
    }

    private LabelAttempt Try(LabelShape shape) => Fit(shape) is { } fitted ? fitted : Explain(shape);

    private FittedLabel? Fit(LabelShape shape) => shape.Request.Form == LabelForm.Leaflet ? FitLeaflet(shape) : FitOne(shape);

    private FittedLabel? FitOne(LabelShape shape)
    {
        if (fitter.TryFit(whole, shape) is not { } page)
        {
            return null;
        }

        List<string> notes = [.. LeftOffNotes()];
        if (!shape.Holds(band.Label))
        {
            notes.Add(
                $"smaller than {band.Label}, which the law asks for \"if possible\" ({format.Clause}): {(assessment.Candle.Label is null ? "no larger face of the vessel holds one" : "as the maker asked")}"
            );
        }

        return new FittedLabel([page.Scene], shape, page.XHeight, page.Pictogram, band, notes, leftOff);
    }

    private FittedLabel? FitLeaflet(LabelShape shape)
    {
        FittedPage? outside = front.Value is { } document ? fitter.TryFit(document, shape) : null;
        FittedPage? inside = fitter.TryFit(whole, shape);
        return outside is null || inside is null
            ? null
            : new FittedLabel(
                [outside.Scene, inside.Scene],
                shape,
                new Millimetres(Math.Min(outside.XHeight.Value, inside.XHeight.Value)),
                inside.Pictogram,
                band,
                [
                    .. LeftOffNotes(),
                    $"a leaflet or tag is lawful where the package is too small or too awkward for a label; the package itself still bears pictograms, product name, supplier and telephone ({assessment.Edition.Label.LeafletClause})",
                ],
                leftOff
            );
    }

    private IEnumerable<string> LeftOffNotes() =>
        leftOff.Count == 0
            ? []
            :
            [
                $"left off because the package is small: {string.Join(", ", leftOff.Select(l => l.Code))} ({assessment.Edition.SmallPackages.Clause})",
            ];

    private Misfit Explain(LabelShape shape)
    {
        (Millimetres height, Millimetres width) = fitter.Missing(whole, shape);
        var remedies = new List<string>();
        LabelShape? larger = assessment
            .Edition.Formats.OfferedSizes.Select(s => Arrangements.Rectangle(s, ""))
            .Where(s => s.Holds(band.Label) && s.AreaMm2 > shape.AreaMm2)
            .OrderBy(s => s.AreaMm2)
            .FirstOrDefault(s => fitter.Holds(whole, s));
        if (larger is not null)
        {
            remedies.Add($"a larger label: {larger.Request} holds it");
        }

        if (assessment.Languages.Count > 1)
        {
            remedies.Add($"fewer languages on one label (it has {assessment.Languages.Count}): a label for each place of sale");
        }

        if (shape.Request.Form != LabelForm.Leaflet)
        {
            remedies.Add(
                $"a fold-out leaflet or a tie-on tag, where the package is too small or too awkward for a label ({assessment.Edition.Label.LeafletClause}): write 'label: {{ shape: leaflet, widthMm: 74, heightMm: 105 }}'"
            );
        }

        if (assessment.SmallPackageRelief.Count > 0)
        {
            remedies.Add(
                $"leaving off {string.Join(", ", assessment.SmallPackageRelief.Select(r => r.Code))} as a small package is tried by itself ({assessment.Edition.SmallPackages.Clause})"
            );
        }

        return new Misfit(shape, height, width, remedies);
    }
}
