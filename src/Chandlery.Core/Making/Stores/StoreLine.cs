namespace Chandlery.Core.Making.Stores;

/// <summary>What is in store of a material.</summary>
/// <param name="Material">The material.</param>
/// <param name="Name">What people call it.</param>
/// <param name="In">How much was bought, in its unit; null when a lot does not say.</param>
/// <param name="Out">How much went into batches; null when a batch does not say.</param>
/// <param name="Lots">Its lots, the oldest first.</param>
/// <param name="Notes">What is to be minded.</param>
public sealed record StoreLine(
    Material Material,
    string Name,
    double? In,
    double? Out,
    IReadOnlyList<LotLine> Lots,
    IReadOnlyList<string> Notes
)
{
    /// <summary>How much is left; null when not known, below zero when more was used than bought.</summary>
    public double? Left => In - Out;
}
