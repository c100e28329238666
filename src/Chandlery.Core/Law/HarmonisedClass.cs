using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>A class of an entry of the table.</summary>
/// <param name="Text">Class, category and statement as the table prints them, with its asterisks.</param>
/// <param name="Claim">The class as the rules use it; null where no rule computes it (explosives, gases, peroxides...).</param>
/// <param name="IsMinimum">
/// True where the table marks it with one asterisk: a minimum that was translated from older law, which gives way to a more severe
/// class that is known (CLP Annex VI, 1.2.1).
/// </param>
public sealed record HarmonisedClass(string Text, HazardClaim? Claim, bool IsMinimum);
