using Chandlery.Core.Hazards;

namespace Chandlery.Core.Asked.Ceilings;

/// <summary>Something that begins or ends at a ceiling.</summary>
/// <param name="What">What begins or ends.</param>
/// <param name="Kind">What kind of thing that is.</param>
/// <param name="Begins">True when it begins with more oil, false when it ends.</param>
/// <param name="SetBy">The ingredient, oil or wax that sets it.</param>
/// <param name="Clause">Where the rule stands, or whose limit it is.</param>
public sealed record Consequence(string What, ConsequenceKind Kind, bool Begins, string SetBy, Citation Clause);
