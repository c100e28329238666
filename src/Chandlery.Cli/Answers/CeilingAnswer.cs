namespace Chandlery.Cli.Answers;

/// <summary>How far a load can go, for programs.</summary>
/// <param name="Candle">Name of the declaration.</param>
/// <param name="Edition">The edition of the law.</param>
/// <param name="Varied">load, oneOil or blendShare.</param>
/// <param name="Oil">The oil that is varied; null when all are.</param>
/// <param name="Now">The candle as it is declared.</param>
/// <param name="Ceilings">The ceilings, the lowest first.</param>
internal sealed record CeilingAnswer(
    string Candle,
    string Edition,
    string Varied,
    string? Oil,
    LoadFigures Now,
    IReadOnlyList<CeilingStep> Ceilings
);
