using Chandlery.Core.Declared;

namespace Chandlery.Core.Composed;

/// <summary>What a recipe's shares are reckoned from. All masses are on one scale, grams or parts of the same whole.</summary>
/// <param name="Wax">The wax.</param>
/// <param name="WaxMass">Its mass in the scented melt.</param>
/// <param name="Oils">The oils in their proportion to each other, which need not come to <paramref name="OilMass"/>.</param>
/// <param name="OilMass">Mass of all oils together in the melt.</param>
/// <param name="Extras">Dyes and other extras with their mass in the melt.</param>
/// <param name="TopUp">Mass of wax in the second pour; 0 for none.</param>
internal sealed record RecipeMasses(
    Wax Wax,
    double WaxMass,
    IReadOnlyList<(Oil Oil, double Mass)> Oils,
    double OilMass,
    IReadOnlyList<(Extra Extra, double Mass)> Extras,
    double TopUp
);
