using Chandlery.Core.Quantities;

namespace Chandlery.Paper.Papers;

/// <summary>What the user chooses of a pour.</summary>
public sealed record PourSettings
{
    /// <summary>How far below the fill line the first pour ends; null where nobody chose it.</summary>
    public Millimetres? Gap { get; init; }

    /// <summary>Other candles from the same melt, by file name, and how many of each.</summary>
    public IReadOnlyList<(string Candle, int Count)> Also { get; init; } = [];

    /// <summary>How much leftover melt is used again; null for none.</summary>
    public Grams? Leftover { get; init; }

    /// <summary>The candle that it is left of, by file name; null for the same candle.</summary>
    public string? LeftoverOf { get; init; }

    /// <summary>Whether anything of it was chosen.</summary>
    public bool IsChosen => Gap is not null || Also.Count > 0 || Leftover is not null || LeftoverOf is not null;
}
