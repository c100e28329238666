namespace Chandlery.Cli.Answers;

/// <summary>One load in each of its measures, percent.</summary>
/// <param name="Varied">Of one oil its percent of the melt, or its share of the blend; of the whole load percent of the wax.</param>
/// <param name="OfWax">All oil per 100 parts of wax.</param>
/// <param name="OfMelt">All oil in 100 parts of the scented melt.</param>
/// <param name="OfCandle">All oil in 100 parts of the finished candle.</param>
internal sealed record LoadFigures(double Varied, double OfWax, double OfMelt, double OfCandle);
