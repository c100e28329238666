using Chandlery.Workbench.Forms;

namespace Chandlery.Workbench.Desks;

/// <summary>That trials shall be assessed.</summary>
/// <param name="Wax">Name of the wax that they would be stirred into; null for the first.</param>
/// <param name="LoadPercent">How much of it, percent of the wax; null for a usual load.</param>
/// <param name="Places">Codes of the places of sale.</param>
/// <param name="Trial">A trial that is being edited; null for none.</param>
/// <param name="Only">Name of the one trial that is asked for; null for all.</param>
public sealed record NotebookRequest(
    string? Wax = null,
    double? LoadPercent = null,
    IReadOnlyList<string>? Places = null,
    FormRequest? Trial = null,
    string? Only = null
);
