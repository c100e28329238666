namespace Chandlery.Tests.SecondCalculation;

/// <summary>The acute toxicity scale of one form.</summary>
/// <param name="Upper">Highest estimate of categories 1 to 4, or 5, included (Table 3.1.1).</param>
/// <param name="Points">Converted point estimates of the same categories (Table 3.1.2).</param>
internal sealed record AcuteScale(double[] Upper, double[] Points)
{
    /// <summary>The category that stands for "none".</summary>
    public const int None = 6;

    /// <summary>The scale of a form. Category 5 of the UN GHS has figures for what is swallowed and for skin alone.</summary>
    public static AcuteScale Of(GivenForm form, SecondEdition edition)
    {
        AcuteScale four = Of(form);
        return edition.HasMildCategories && (form is GivenForm.Oral or GivenForm.Dermal)
            ? new AcuteScale([.. four.Upper, 5000], [.. four.Points, 2500])
            : four;
    }

    /// <summary>The scale of a form as in the Union, which has four categories.</summary>
    public static AcuteScale Of(GivenForm form) =>
        form switch
        {
            GivenForm.Oral => new AcuteScale([5, 50, 300, 2000], [0.5, 5, 100, 500]),
            GivenForm.Dermal => new AcuteScale([50, 200, 1000, 2000], [5, 50, 300, 1100]),
            GivenForm.Gas => new AcuteScale([100, 500, 2500, 20000], [10, 100, 700, 4500]),
            GivenForm.Vapour => new AcuteScale([0.5, 2, 10, 20], [0.05, 0.5, 3, 11]),
            GivenForm.Dust => new AcuteScale([0.05, 0.5, 1, 5], [0.005, 0.05, 0.5, 1.5]),
            _ => throw new ArgumentOutOfRangeException(nameof(form)),
        };

    /// <summary>The category of an estimate, or <see cref="None"/>.</summary>
    public int CategoryOf(double estimate)
    {
        int index = Array.FindIndex(Upper, upper => !Shares.Exceeds(estimate, upper));
        return index < 0 ? None : index + 1;
    }

    /// <summary>The converted point estimate of a category.</summary>
    public double PointOf(int category) => Points[category - 1];
}
