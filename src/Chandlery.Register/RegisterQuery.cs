namespace Chandlery.Register;

/// <summary>What to look for; empty fields match everything.</summary>
/// <param name="Batch">Batch code or name.</param>
/// <param name="Substance">Part of a substance's name, or its CAS number.</param>
/// <param name="Oil">Name of an oil's declaration, or part of its trade name.</param>
/// <param name="Document">Part of the supplier document's reference.</param>
/// <param name="Revised">Revision date of that document.</param>
public sealed record RegisterQuery(
    string? Batch = null,
    string? Substance = null,
    string? Oil = null,
    string? Document = null,
    string? Revised = null
);
