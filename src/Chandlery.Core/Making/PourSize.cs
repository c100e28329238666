using Chandlery.Core.Composed;
using Chandlery.Core.Declared;

namespace Chandlery.Core.Making;

/// <summary>Candles of one size in a pour.</summary>
/// <param name="Candle">The candle.</param>
/// <param name="Vessel">Its vessel.</param>
/// <param name="Recipe">Its shares.</param>
/// <param name="Count">How many, from 1.</param>
public sealed record PourSize(Candle Candle, Vessel Vessel, Recipe Recipe, int Count);
