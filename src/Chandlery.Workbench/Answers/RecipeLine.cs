namespace Chandlery.Workbench.Answers;

/// <summary>What an oil comes to in the finished candle.</summary>
/// <param name="Id">Name of its declaration.</param>
/// <param name="Name">Trade name.</param>
/// <param name="BlendPercent">Percent of the blend.</param>
/// <param name="CandlePercent">Percent of the finished candle.</param>
/// <param name="Grams">Grams in one candle.</param>
/// <param name="Millilitres">Millilitres in one candle; null when its density is unknown.</param>
/// <param name="Drops">Drops in one candle; null when the mass of a drop is unknown.</param>
internal sealed record RecipeLine(
    string Id,
    string Name,
    double BlendPercent,
    double CandlePercent,
    double Grams,
    double? Millilitres,
    double? Drops
);
