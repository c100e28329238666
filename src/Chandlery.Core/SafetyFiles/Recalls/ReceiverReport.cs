namespace Chandlery.Core.SafetyFiles.Recalls;

/// <summary>Who has candles of a batch, for programs.</summary>
/// <param name="On">The day.</param>
/// <param name="Pieces">How many.</param>
/// <param name="Country">Country code.</param>
/// <param name="ToWhom">shop or person.</param>
/// <param name="Name">Name; null when forgotten.</param>
/// <param name="Contact">How to reach them; null when not known.</param>
public sealed record ReceiverReport(string On, int Pieces, string Country, string ToWhom, string? Name, string? Contact);
