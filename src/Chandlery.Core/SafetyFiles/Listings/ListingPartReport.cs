namespace Chandlery.Core.SafetyFiles.Listings;

/// <summary>A part of a listing for programs.</summary>
/// <param name="Part">What it is.</param>
/// <param name="Heading">Its heading.</param>
/// <param name="Texts">Its sentences.</param>
/// <param name="Clause">Where it is asked for.</param>
public sealed record ListingPartReport(string Part, string Heading, IReadOnlyList<string> Texts, string Clause);
