namespace Chandlery.Core.SafetyFiles.Procedures;

/// <summary>One thing that a maker does for the safety of products.</summary>
/// <param name="Name">What it is.</param>
/// <param name="How">How it is done.</param>
/// <param name="State">What the declarations show of it today; empty for nothing.</param>
/// <param name="Clause">Where the law asks for it; empty where no rule is known for the places.</param>
public sealed record ProcedureTask(string Name, string How, string State, string Clause);
