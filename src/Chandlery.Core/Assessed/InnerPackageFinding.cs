using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;

namespace Chandlery.Core.Assessed;

/// <summary>Says what the vessel itself must bear where the label stands elsewhere.</summary>
internal static class InnerPackageFinding
{
    /// <summary>One finding, or none where the whole label stands on the vessel.</summary>
    public static IEnumerable<Finding> Of(Subject subject, Verdict verdict)
    {
        if (
            InnerPackages.Of(
                verdict.Law.Edition.SmallPackages,
                verdict.Law.Day,
                verdict.Classification,
                verdict.Label,
                subject.Contents,
                subject.Candle.LabelStands
            ) is
            { } inner
        )
        {
            string bears = string.Join(", ", inner.Bears.Select(b => Words(b, inner, verdict)).Where(w => w.Length > 0));
            string whole = subject.Candle.LabelStands == LabelPlace.OnVessel ? "may bear no more than" : "itself must bear";
            yield return new Finding(Gravity.Look, $"The vessel {whole}: {bears} ({inner.Because}).", inner.Clause);
        }
    }

    private static string Words(InnerElement element, InnerPackage inner, Verdict verdict) =>
        element switch
        {
            InnerElement.Pictograms => string.Join(" ", inner.Pictograms.Select(p => p.Code)),
            InnerElement.SignalWord => verdict.Label.SignalWord is { } word ? $"the signal word {word.Text}" : "",
            InnerElement.ProductName => "the product's name",
            _ => "name and telephone number of the supplier",
        };
}
