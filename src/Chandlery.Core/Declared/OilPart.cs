using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>One oil of a blend.</summary>
/// <param name="Oil">Which oil.</param>
/// <param name="Amount">How much, in <paramref name="Measure"/>.</param>
/// <param name="Measure">The unit of <paramref name="Amount"/>.</param>
/// <param name="Place">Where it is declared.</param>
public sealed record OilPart(Reference Oil, double Amount, OilMeasure Measure, TextPlace Place);
