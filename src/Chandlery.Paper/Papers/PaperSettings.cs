namespace Chandlery.Paper.Papers;

/// <summary>What the user chooses of papers.</summary>
/// <param name="Count">How many candles, from 1.</param>
/// <param name="WastePercent">Allowance for what stays in the jug, percent, 0 to 50.</param>
/// <param name="Revision">Number of a sheet's revision, from 1.</param>
/// <param name="Wicks">How many wicks to lay out; null for as many as the candle declares.</param>
public sealed record PaperSettings(
    int Count = 1,
    double WastePercent = PaperSettings.UsualWastePercent,
    int Revision = PaperSettings.FirstRevision,
    int? Wicks = null
)
{
    /// <summary>An earlier technical file, or a folder of then, that a technical file is compared with; null for the register.</summary>
    public string? Since { get; init; }

    /// <summary>What is chosen of a pour.</summary>
    public PourSettings Pour { get; init; } = new();

    /// <summary>Allowance for what stays in the jug, percent (common practice, no source).</summary>
    public const double UsualWastePercent = 3;

    /// <summary>Number of the first revision.</summary>
    public const int FirstRevision = 1;
}
