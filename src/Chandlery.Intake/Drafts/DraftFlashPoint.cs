namespace Chandlery.Intake.Drafts;

/// <summary>Flash point as read.</summary>
/// <param name="Celsius">Temperature.</param>
/// <param name="IsLowerBound">True for "above".</param>
/// <param name="Method">"closed cup", "open cup" or null.</param>
public sealed record DraftFlashPoint(double Celsius, bool IsLowerBound, string? Method);
