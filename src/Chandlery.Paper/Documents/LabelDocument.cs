using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Markup;

namespace Chandlery.Paper.Documents;

/// <summary>The label of a candle: either one that fits, or what is missing.</summary>
/// <param name="Fitted">The label; null when it does not fit.</param>
/// <param name="Misfit">What is missing; null when it fits.</param>
/// <param name="Format">How the law wants labels to look on the day of the assessment.</param>
/// <param name="LeftOff">Statements left off because the package is small and the text would not fit with them.</param>
public sealed record LabelResult(FittedLabel? Fitted, Misfit? Misfit, LabelFormat Format, IReadOnlyList<LabelChoice> LeftOff);

/// <summary>Makes labels.</summary>
public static class LabelDocument
{
    private const string Template = "label.sbn";
    private const string ConsumerTemplate = "label-consumer.sbn";

    /// <summary>
    /// The label, or null when template or data have problems. Small-package relief is used only where the text does not
    /// fit without it.
    /// </summary>
    public static LabelResult? Make(Assessment assessment, PaperShop shop, BurnAdvice advice, Problems problems)
    {
        LabelResult? full = Make(assessment, shop, advice, [], problems);
        if (full?.Misfit is null || assessment.SmallPackageRelief.Count == 0)
        {
            return full;
        }

        LabelResult? relieved = Make(assessment, shop, advice, assessment.SmallPackageRelief, problems);
        return relieved?.Fitted is null ? full : relieved;
    }

    private static LabelResult? Make(
        Assessment assessment,
        PaperShop shop,
        BurnAdvice advice,
        IReadOnlyList<LabelChoice> leftOff,
        Problems problems
    )
    {
        string template = assessment.Edition.LabelKind == LabelKind.Consumer ? ConsumerTemplate : Template;
        string? xml = shop.Templates.Write(template, LabelModel.Of(assessment, advice, leftOff.Select(l => l.Code).ToHashSet()), problems);
        MarkupDocument? document = xml is null ? null : MarkupReader.Read(xml, "templates/" + template, problems);
        if (document is null)
        {
            return null;
        }

        LabelFormat format = assessment.Edition.Formats.On(assessment.AsOf);
        SizeBand band = format.BandFor(assessment.Vessel.Brimful);
        var fitter = new LabelFitter(shop.Symbols, format, band);
        List<LabelSize> lawful = [.. assessment.Edition.Formats.OfferedSizes.Where(s => IsLawful(s, band)).OrderBy(Area)];
        if (assessment.Candle.Label is { } asked)
        {
            if (!IsLawful(asked, band) && !band.IfPossible)
            {
                string too =
                    $"A label of {asked} is too small: a package of {assessment.Vessel.Brimful} needs at least {band.Label} ({format.Clause}).";
                return new LabelResult(null, new Misfit(asked, Short(asked, band), new Millimetres(0), [too]), format, leftOff);
            }

            return fitter.TryFit(document, asked) is { } fitted
                ? new LabelResult(fitted, null, format, leftOff)
                : new LabelResult(null, Explain(assessment, document, fitter, asked, lawful), format, leftOff);
        }

        foreach (LabelSize size in lawful)
        {
            if (fitter.TryFit(document, size) is { } fitted)
            {
                return new LabelResult(fitted, null, format, leftOff);
            }
        }

        return new LabelResult(null, Explain(assessment, document, fitter, lawful[^1], []), format, leftOff);
    }

    private static Misfit Explain(Assessment a, MarkupDocument document, LabelFitter fitter, LabelSize size, List<LabelSize> others)
    {
        (Millimetres height, Millimetres width) = fitter.Missing(document, size);
        var remedies = new List<string>();
        if (others.FirstOrDefault(o => Area(o) > Area(size) && fitter.TryFit(document, o) is not null) is { } larger)
        {
            remedies.Add($"a larger label: {larger} holds it");
        }

        if (a.Languages.Count > 1)
        {
            remedies.Add($"fewer languages on one label (it has {a.Languages.Count}): a label for each place of sale");
        }

        if (a.SmallPackageRelief.Count > 0)
        {
            remedies.Add(
                $"leaving off {string.Join(", ", a.SmallPackageRelief.Select(r => r.Code))} as a small package ({a.Edition.SmallPackages.Clause}) was tried and is not enough"
            );
        }

        remedies.Add("a fold-out label or a tie-on tag (CLP Annex I, 1.5.1)");
        return new Misfit(size, height, width, remedies);
    }

    // The law's sizes name two sides; a label may lie on either.
    private static bool IsLawful(LabelSize size, SizeBand band)
    {
        (double shorter, double longer) = Sides(size);
        (double leastShorter, double leastLonger) = Sides(band.Label);
        return shorter >= leastShorter && longer >= leastLonger;
    }

    private static Millimetres Short(LabelSize size, SizeBand band) => new(Math.Max(0, Sides(band.Label).Longer - Sides(size).Longer));

    private static (double Shorter, double Longer) Sides(LabelSize size) =>
        (Math.Min(size.Width.Value, size.Height.Value), Math.Max(size.Width.Value, size.Height.Value));

    private static double Area(LabelSize size) => size.Width.Value * size.Height.Value;
}
