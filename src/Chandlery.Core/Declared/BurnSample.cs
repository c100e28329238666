namespace Chandlery.Core.Declared;

/// <summary>A candle that was burnt to its end.</summary>
/// <param name="Name">How it is told from the others.</param>
/// <param name="Burns">Its burns in their order.</param>
/// <param name="FellOnSlope">Whether it fell on the slope that the maker's limits name; null when not tried.</param>
/// <param name="VesselWhole">Whether the vessel was whole at the end; null when not noted.</param>
/// <param name="WentOut">Whether the flame went out by itself at the end; null when not burnt so far.</param>
public sealed record BurnSample(string Name, IReadOnlyList<Burn> Burns, bool? FellOnSlope, bool? VesselWhole, bool? WentOut);
