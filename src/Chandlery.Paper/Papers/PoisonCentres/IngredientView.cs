using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.PoisonCentres;

/// <summary>An ingredient as the notification names it.</summary>
/// <param name="Name">Name.</param>
/// <param name="Cas">CAS number, or a dash.</param>
/// <param name="Ec">EC number, or a dash.</param>
/// <param name="Band">Range of concentration.</param>
/// <param name="Hazards">Its classes.</param>
internal sealed record IngredientView(string Name, string Cas, string Ec, string Band, string Hazards) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [("name", Name), ("cas", Cas), ("ec", Ec), ("band", Band), ("hazards", Hazards)];
}
