using Chandlery.Core.Classified;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Labelled;

/// <summary>What the vessel itself bears where the label stands on a tag or an outer package (CLP Annex I, 1.5.1.2 and 1.5.2.4).</summary>
internal static class InnerPackages
{
    /// <summary>What the vessel bears; null where the whole label stands on it, or the law knows no other place.</summary>
    /// <param name="verdict">The label elements and the law.</param>
    /// <param name="contents">What is in the vessel.</param>
    /// <param name="place">Where the label stands.</param>
    public static InnerPackage? Of(Verdict verdict, Millilitres contents, LabelPlace place)
    {
        SmallPackageRules rules = verdict.Law.Edition.SmallPackages;
        if (rules.Tiny is { } tiny && MayLeaveAllOff(tiny, verdict, contents, place))
        {
            return new InnerPackage(
                [InnerElement.ProductName, InnerElement.Pictograms],
                [.. verdict.Label.Pictograms.Select(p => p.Code).Where(tiny.Pictograms.Contains)],
                $"at most {tiny.UpTo}, and none of the grave classes",
                tiny.Clause
            );
        }

        return place != LabelPlace.OnVessel && rules.Inner.FirstOrDefault(r => r.InForce.On(verdict.Law.Day)) is { } inner
            ? new InnerPackage(
                inner.Bears,
                [.. verdict.Label.Pictograms.Select(p => p.Code)],
                "the label stands on a tag or an outer package",
                inner.Clause
            )
            : null;
    }

    // A statement that does not come from a class (EUH208 and the like) asks for an outer package with the whole label.
    private static bool MayLeaveAllOff(TinyPackageRule tiny, Verdict verdict, Millilitres contents, LabelPlace place)
    {
        IReadOnlyList<ClassResult> classes = verdict.Classification.Classes;
        bool says = verdict.Label.Supplemental.Any(s => classes.All(c => c.Category.Statement != s.Code));
        return tiny.InForce.On(verdict.Law.Day)
            && contents.Value <= tiny.UpTo.Value
            && !classes.Any(c => tiny.NotWith.Contains(c.Category))
            && (!says || place == LabelPlace.OnOuterPackage);
    }
}
