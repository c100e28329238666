namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>A row of <see cref="Ledger"/>.</summary>
/// <param name="Figure">Its figure; empty where strokes count.</param>
/// <param name="Words">What it counts.</param>
/// <param name="WidestDecimals">Decimals that all figures of the column leave room for.</param>
internal sealed record LedgerRow(string Figure, string Words, string WidestDecimals)
{
    /// <summary>How many strokes; 0 for a figure.</summary>
    public int Tally { get; init; }

    /// <summary>True for the sum.</summary>
    public bool IsSum { get; init; }
}
