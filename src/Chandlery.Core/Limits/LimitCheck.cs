namespace Chandlery.Core.Limits;

/// <summary>A declared limit against the candle's figure.</summary>
/// <param name="Name">What is limited.</param>
/// <param name="Value">The candle's figure; null when it is not known.</param>
/// <param name="Limit">The limit; null when nobody declared one.</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="Holds">Whether it holds; null when it could not be checked.</param>
/// <param name="Source">Whose limit it is.</param>
/// <param name="Explanation">What it means, in a sentence.</param>
public sealed record LimitCheck(string Name, double? Value, double? Limit, string Unit, bool? Holds, string Source, string Explanation)
{
    /// <summary>How much room is left, in the unit; negative when the limit is broken; null when it could not be checked.</summary>
    public double? Margin { get; init; } = Limit - Value;
}
