namespace Chandlery.Core.Asked.Trials;

/// <summary>What the oil of a kilogram of candle may cost.</summary>
/// <param name="PerGramByOil">What a gram of each oil costs, by the oil's name, in the maker's currency.</param>
/// <param name="MostPerKilogram">The most, in the same currency.</param>
public sealed record CostBound(IReadOnlyDictionary<string, double> PerGramByOil, double MostPerKilogram);
