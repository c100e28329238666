using Chandlery.Core.Classified;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Labelled;

/// <summary>What the vessel itself bears where the label stands on a tag or an outer package (CLP Annex I, 1.5.1.2 and 1.5.2.4).</summary>
internal static class InnerPackages
{
    /// <summary>What the vessel bears; null where the whole label stands on it, or the law knows no other place.</summary>
    /// <param name="rules">The law.</param>
    /// <param name="day">The day that decides which rules hold.</param>
    /// <param name="classification">The candle's classes.</param>
    /// <param name="label">Its label elements.</param>
    /// <param name="contents">What is in the vessel.</param>
    /// <param name="place">Where the label stands.</param>
    public static InnerPackage? Of(
        SmallPackageRules rules,
        DateOnly day,
        Classification classification,
        LabelElements label,
        Millilitres contents,
        LabelPlace place
    )
    {
        if (
            rules.Tiny is { } tiny
            && tiny.InForce.On(day)
            && contents.Value <= tiny.UpTo.Value
            && MayLeaveAllOff(tiny, classification, label, place)
        )
        {
            return new InnerPackage(
                [InnerElement.ProductName, InnerElement.Pictograms],
                [.. label.Pictograms.Select(p => p.Code).Where(tiny.Pictograms.Contains)],
                $"at most {tiny.UpTo}, and none of the grave classes",
                tiny.Clause
            );
        }

        return place != LabelPlace.OnVessel && rules.Inner.FirstOrDefault(r => r.InForce.On(day)) is { } inner
            ? new InnerPackage(
                inner.Bears,
                [.. label.Pictograms.Select(p => p.Code)],
                "the label stands on a tag or an outer package",
                inner.Clause
            )
            : null;
    }

    // A statement that does not come from a class (EUH208 and the like) asks for an outer package with the whole label.
    private static bool MayLeaveAllOff(TinyPackageRule tiny, Classification classification, LabelElements label, LabelPlace place)
    {
        IReadOnlyList<ClassResult> classes = classification.Classes;
        bool says = label.Supplemental.Any(s => classes.All(c => c.Category.Statement != s.Code));
        return !classes.Any(c => tiny.NotWith.Contains(c.Category)) && (!says || place == LabelPlace.OnOuterPackage);
    }
}
