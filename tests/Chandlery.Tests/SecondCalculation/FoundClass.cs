namespace Chandlery.Tests.SecondCalculation;

/// <summary>A class that the mixture gets.</summary>
/// <param name="Code">Class and category, such as <c>Acute Tox. 4 (oral)</c>.</param>
/// <param name="Causes">The substances that bring it about.</param>
internal sealed record FoundClass(string Code, IReadOnlyList<Cause> Causes)
{
    /// <summary>The chiefly responsible substances: the one of greatest weight, or several that are equal.</summary>
    public IEnumerable<string> Chiefs
    {
        get
        {
            double greatest = Causes.Max(c => c.Weight);
            return Causes.Where(c => Shares.Reaches(c.Weight, greatest)).Select(c => c.Name);
        }
    }
}
