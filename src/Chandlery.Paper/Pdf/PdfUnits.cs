namespace Chandlery.Paper.Pdf;

/// <summary>Lengths of a PDF.</summary>
internal static class PdfUnits
{
    /// <summary>Points in a millimetre: a point is a seventy-second part of an inch (ISO 32000-1, 8.3.2.3).</summary>
    public const double PointsPerMm = 72 / 25.4;

    /// <summary>Decimals of millimetres: half a thousandth of a millimetre is the most that is lost.</summary>
    public const int Decimals = 3;

    /// <summary>Decimals of points where a page's size is told.</summary>
    public const int PointDecimals = 4;
}
