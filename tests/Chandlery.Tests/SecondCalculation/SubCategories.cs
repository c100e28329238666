namespace Chandlery.Tests.SecondCalculation;

/// <summary>Categories of a specific limit against those of the substance.</summary>
internal static class SubCategories
{
    /// <summary>A limit printed for the whole Category 1 is that of the sub-category which the substance has.</summary>
    public static string Settle(string ofLimit, IReadOnlyList<string> declared) =>
        ofLimit == "1" ? declared.FirstOrDefault(d => d is "1A" or "1B" or "1C") ?? ofLimit : ofLimit;
}
