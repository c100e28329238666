using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>What was really weighed for a batch; it wins over the candle's plan.</summary>
/// <param name="Id">File name without its ending.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Candle">Which candle was made.</param>
/// <param name="Code">Batch code on the label.</param>
/// <param name="Poured">Day of pouring.</param>
/// <param name="WaxWeight">Grams of wax in the scented melt.</param>
/// <param name="Oils">Grams of each oil.</param>
/// <param name="Extras">Grams of each extra.</param>
/// <param name="TopUp">Grams of the second pour.</param>
public sealed record Batch(
    string Id,
    TextPlace Place,
    Reference Candle,
    string Code,
    DateOnly Poured,
    Grams WaxWeight,
    IReadOnlyList<OilPart> Oils,
    IReadOnlyList<ExtraPart> Extras,
    TopUp? TopUp
) : IDeclaration;
