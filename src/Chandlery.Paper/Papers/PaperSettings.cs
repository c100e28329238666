namespace Chandlery.Paper.Papers;

/// <summary>What the user chooses of papers.</summary>
/// <param name="Count">How many candles, from 1.</param>
/// <param name="WastePercent">Allowance for what stays in the jug, percent, 0 to 50.</param>
/// <param name="Revision">Number of a sheet's revision, from 1.</param>
public sealed record PaperSettings(
    int Count = 1,
    double WastePercent = PaperSettings.UsualWastePercent,
    int Revision = PaperSettings.FirstRevision
)
{
    /// <summary>Allowance for what stays in the jug, percent (common practice, no source).</summary>
    public const double UsualWastePercent = 3;

    /// <summary>Number of the first revision.</summary>
    public const int FirstRevision = 1;
}
