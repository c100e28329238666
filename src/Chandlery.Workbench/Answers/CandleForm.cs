namespace Chandlery.Workbench.Answers;

/// <summary>What the form of a candle shows.</summary>
/// <param name="Name">Trade name.</param>
/// <param name="NetGrams">Net grams.</param>
/// <param name="LoadPercent">Load, percent; null when the oils are weighed.</param>
/// <param name="LoadOf">wax or candle; null when the oils are weighed.</param>
/// <param name="WaxGrams">Grams of wax that the oils are weighed for; null when the load is given.</param>
/// <param name="Oils">The blend.</param>
/// <param name="WickCount">Number of wicks.</param>
internal sealed record CandleForm(
    string Name,
    double NetGrams,
    double? LoadPercent,
    string? LoadOf,
    double? WaxGrams,
    IReadOnlyList<OilEdit> Oils,
    int WickCount
);
