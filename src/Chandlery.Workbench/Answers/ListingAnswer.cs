using Chandlery.Core.SafetyFiles.Listings;

namespace Chandlery.Workbench.Answers;

/// <summary>The texts of a candle for a shop or an advertisement.</summary>
/// <param name="Listings">A listing for each language.</param>
/// <param name="Refused">Why one is not there.</param>
internal sealed record ListingAnswer(IReadOnlyList<ListingReport> Listings, IReadOnlyList<string> Refused);
