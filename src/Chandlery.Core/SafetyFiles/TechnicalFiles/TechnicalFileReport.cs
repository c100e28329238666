namespace Chandlery.Core.SafetyFiles.TechnicalFiles;

/// <summary>What a technical file finds, for programs.</summary>
/// <param name="Candle">Name of the declaration.</param>
/// <param name="Edition">The edition of the law.</param>
/// <param name="Version">Number of the file's version.</param>
/// <param name="Risks">The risks that were looked at.</param>
/// <param name="Missing">What is missing, a sentence each.</param>
/// <param name="Keep">How long the file is kept, a place each.</param>
public sealed record TechnicalFileReport(
    string Candle,
    string Edition,
    int Version,
    IReadOnlyList<RiskReport> Risks,
    IReadOnlyList<string> Missing,
    IReadOnlyList<KeepReport> Keep
);
