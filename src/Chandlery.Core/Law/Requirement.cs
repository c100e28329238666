using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>Something that a label needs or does not need.</summary>
/// <param name="Needed">Whether it does.</param>
/// <param name="Clause">Where that stands.</param>
public sealed record Requirement(bool Needed, Citation Clause);
