namespace Chandlery.Core.SafetyFiles.Quantities;

/// <summary>A sum of packaging for programs.</summary>
/// <param name="Country">Country code.</param>
/// <param name="Year">The year.</param>
/// <param name="Material">The material.</param>
/// <param name="Grams">Grams of it.</param>
public sealed record PackagingLine(string Country, int Year, string Material, double Grams)
{
    /// <summary>The line of a sum.</summary>
    public static PackagingLine Of(PackagingSum sum) =>
        new(sum.Country, sum.Year, sum.Material.ToString().ToLowerInvariant(), Math.Round(sum.Grams, 3));
}
