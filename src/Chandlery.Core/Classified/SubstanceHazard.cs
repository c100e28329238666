using Chandlery.Core.Hazards;

namespace Chandlery.Core.Classified;

/// <summary>A hazard of a substance as the rules use it.</summary>
/// <param name="Category">The category.</param>
/// <param name="Statement">Its statement, with the letters that say more (H361d).</param>
/// <param name="Organs">The organs that its source names; empty for none.</param>
/// <param name="M">M-factor; 1 when none applies or none is known.</param>
/// <param name="MIsKnown">False when the class calls for an M-factor and nobody gave one.</param>
/// <param name="Source">Whose word this is.</param>
public sealed record SubstanceHazard(
    HazardCategory Category,
    StatementCode Statement,
    string Organs,
    double M,
    bool MIsKnown,
    string Source
)
{
    /// <summary>The statement with the organs that it names, such as <c>H373 (kidneys)</c>.</summary>
    public string StatementWithOrgans => Organs.Length == 0 ? Statement.Text : $"{Statement} ({Organs})";
}
