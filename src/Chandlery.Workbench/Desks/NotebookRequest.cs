namespace Chandlery.Workbench.Desks;

/// <summary>That the trials shall be assessed.</summary>
/// <param name="Wax">Name of the wax that they would be stirred into; null for the first.</param>
/// <param name="LoadPercent">How much of it, percent of the wax; null for a usual load.</param>
/// <param name="Places">Codes of the places of sale.</param>
public sealed record NotebookRequest(string? Wax = null, double? LoadPercent = null, IReadOnlyList<string>? Places = null);
