using Chandlery.Core.Hazards;
using Chandlery.Core.Law.ProductSafety;

namespace Chandlery.Core.SafetyFiles.Listings;

/// <summary>A part of a listing.</summary>
/// <param name="Part">What it is.</param>
/// <param name="Heading">Its heading, in the listing's language.</param>
/// <param name="Texts">Its sentences.</param>
/// <param name="Clause">Where it is asked for.</param>
public sealed record ListingLine(ListingPart Part, string Heading, IReadOnlyList<string> Texts, Citation Clause);
