using Chandlery.Core.Quantities;

namespace Chandlery.Core.Notified;

/// <summary>An ingredient as it was, or would be, told to the poison centres.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Share">Its greatest share of the candle.</param>
public sealed record NotifiedShare(string Name, MassPercent Share);
