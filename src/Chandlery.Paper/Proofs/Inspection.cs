namespace Chandlery.Paper.Proofs;

/// <summary>One legal dimension or text, measured in a PDF.</summary>
/// <param name="What">What was measured.</param>
/// <param name="Measured">What was found.</param>
/// <param name="Required">What the law asks for.</param>
/// <param name="Holds">Whether it holds.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record Inspection(string What, string Measured, string Required, bool Holds, string Clause);
