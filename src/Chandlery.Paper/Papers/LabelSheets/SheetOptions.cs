using Chandlery.Core.Quantities;

namespace Chandlery.Paper.Papers.LabelSheets;

/// <summary>How a sheet is printed.</summary>
/// <param name="Start">Number of the first label to use, from 1: the ones before are used up.</param>
/// <param name="CropMarks">Whether to draw crop marks.</param>
/// <param name="OffsetX">How far the printer must be corrected to the right.</param>
/// <param name="OffsetY">How far the printer must be corrected downwards.</param>
public sealed record SheetOptions(int Start, bool CropMarks, Millimetres OffsetX, Millimetres OffsetY)
{
    /// <summary>True to print backs behind their fronts: the second page of each label goes on the sheet's other side.</summary>
    public bool IsDuplex { get; init; }
}
