using Chandlery.Core.Assessed;

namespace Chandlery.Core.SafetyFiles.TechnicalFiles;

/// <summary>What a technical file is compared with.</summary>
/// <param name="Called">What it is, with its day: an entry of the register, or an earlier file.</param>
/// <param name="Then">The candle as it was; null when there is none, or it cannot be assessed.</param>
/// <param name="Why">Why there is none; empty where there is one.</param>
public sealed record EarlierVersion(string Called, Assessment? Then, string Why);
