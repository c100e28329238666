using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A candle as planned.</summary>
/// <param name="Id">File name without its ending.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Use">Indoors or outdoors.</param>
/// <param name="Vessel">What it is poured into.</param>
/// <param name="NetMass">Nominal quantity on the label.</param>
/// <param name="Wax">Its wax.</param>
/// <param name="WaxWeight">Grams of wax in the scented melt, when the recipe is by mass.</param>
/// <param name="Load">Fragrance load, when the recipe is not by mass.</param>
/// <param name="Oils">The oils of the blend.</param>
/// <param name="Extras">Dyes and other extras.</param>
/// <param name="TopUp">Second pour, if any.</param>
/// <param name="Wicks">Its wicks.</param>
/// <param name="Headspace">Room kept free below the brim.</param>
/// <param name="Temperatures">Working temperatures.</param>
/// <param name="SoldIn">Country codes of the places of sale.</param>
/// <param name="Languages">Languages of the label; empty for the places' own.</param>
/// <param name="Label">Label asked for; null for the smallest lawful arrangement that the text fits on.</param>
/// <param name="BatchCode">Batch code to print; null when none is known yet.</param>
/// <param name="FormulationNumber">Formulation number for the UFI; null when none was given out yet.</param>
/// <param name="OnMarketSince">Since when it has been sold; null for a new candle.</param>
/// <param name="Gtin">Article number for a bar code; null for none.</param>
/// <param name="InformationUrl">Web address for a QR code; null for none.</param>
public sealed record Candle(
    string Id,
    TextPlace Place,
    string Name,
    CandleUse Use,
    Reference Vessel,
    Grams NetMass,
    Reference Wax,
    Grams? WaxWeight,
    FragranceLoad? Load,
    IReadOnlyList<OilPart> Oils,
    IReadOnlyList<ExtraPart> Extras,
    TopUp? TopUp,
    Wicks Wicks,
    Millimetres? Headspace,
    WorkingTemperatures Temperatures,
    IReadOnlyList<string> SoldIn,
    IReadOnlyList<string> Languages,
    LabelRequest? Label,
    string? BatchCode,
    long? FormulationNumber,
    DateOnly? OnMarketSince,
    Gtin13? Gtin,
    string? InformationUrl
) : IDeclaration;
