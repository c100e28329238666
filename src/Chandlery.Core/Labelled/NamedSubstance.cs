using Chandlery.Core.Hazards;

namespace Chandlery.Core.Labelled;

/// <summary>A substance named on the label.</summary>
/// <param name="Name">Name to print.</param>
/// <param name="Cas">CAS number, or null.</param>
/// <param name="Because">The reason.</param>
/// <param name="Clause">Where it stands.</param>
/// <param name="IsBehindClass">True when it is behind a class of the candle.</param>
/// <param name="IsSensitiser">True when it is a sensitiser at or over its elicitation limit.</param>
public sealed record NamedSubstance(string Name, string? Cas, string Because, Citation Clause, bool IsBehindClass, bool IsSensitiser);
