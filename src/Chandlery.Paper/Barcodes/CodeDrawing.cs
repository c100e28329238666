using System.Text;
using Chandlery.Paper.Scenes;
using ZXing;
using ZXing.Common;
using ZXing.OneD;
using ZXing.QrCode;
using ZXing.QrCode.Internal;

namespace Chandlery.Paper.Barcodes;

/// <summary>Turns texts into bar codes and QR codes, as vectors.</summary>
public static class CodeDrawing
{
    // GS1 General Specifications, 5.2: EAN-13 has 95 modules and quiet zones of 11 and 7; the nominal module is 0.33 mm
    // wide and the bars are 22.85 mm tall, and no less than 80 % of that may be printed.
    private const int EanLeftQuiet = 11;
    private const int EanRightQuiet = 7;
    private const int EanModules = 95;
    private const double EanModuleMm = 0.264;
    private const double EanHeightMm = 18.28;
    private const int QrQuiet = 4;

    /// <summary>Width of an EAN-13 with its quiet zones, millimetres, at 80 % of the nominal size.</summary>
    public const double EanWidthMm = (EanLeftQuiet + EanModules + EanRightQuiet) * EanModuleMm;

    /// <summary>Height of the bars of an EAN-13, millimetres, at 80 % of the nominal size.</summary>
    public const double EanBarsMm = EanHeightMm;

    /// <summary>A QR code of a side with its quiet zone.</summary>
    /// <param name="text">What it holds.</param>
    /// <param name="xMm">Left.</param>
    /// <param name="yMm">Top.</param>
    /// <param name="sideMm">Side with the quiet zone.</param>
    public static PathItem Qr(string text, double xMm, double yMm, double sideMm)
    {
        var hints = new Dictionary<EncodeHintType, object>
        {
            [EncodeHintType.ERROR_CORRECTION] = ErrorCorrectionLevel.M,
            [EncodeHintType.MARGIN] = QrQuiet,
            [EncodeHintType.CHARACTER_SET] = "UTF-8",
        };
        BitMatrix matrix = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0, hints);
        return new PathItem(Runs(matrix, 1), xMm, yMm, sideMm / matrix.Width, Ink.Black, null, 0);
    }

    /// <summary>The least side at which a phone still reads a QR code: half a millimetre a module (common practice, no source).</summary>
    public static double QrSideMm(string text)
    {
        BitMatrix matrix = new QRCodeWriter().encode(
            text,
            BarcodeFormat.QR_CODE,
            0,
            0,
            new Dictionary<EncodeHintType, object> { [EncodeHintType.MARGIN] = QrQuiet }
        );
        return Math.Max(15, matrix.Width * 0.5);
    }

    /// <summary>An EAN-13 at 80 % of its nominal size, quiet zones included.</summary>
    public static PathItem Ean13(string gtin, double xMm, double yMm)
    {
        BitMatrix matrix = new EAN13Writer().encode(
            gtin,
            BarcodeFormat.EAN_13,
            EanModules,
            1,
            new Dictionary<EncodeHintType, object> { [EncodeHintType.MARGIN] = 0 }
        );
        return new PathItem(
            Runs(matrix, EanHeightMm / EanModuleMm),
            xMm + (EanLeftQuiet * EanModuleMm),
            yMm,
            EanModuleMm,
            Ink.Black,
            null,
            0
        );
    }

    // Neighbouring dark modules of a row become one bar, so that no hairline shows between them.
    private static string Runs(BitMatrix matrix, double rowHeight)
    {
        var path = new StringBuilder();
        for (int row = 0; row < matrix.Height; row++)
        {
            for (int x = 0; x < matrix.Width; x++)
            {
                int start = x;
                while (x < matrix.Width && matrix[x, row])
                {
                    x++;
                }

                if (x > start)
                {
                    path.Append(
                        FormattableString.Invariant($"M{start} {row * rowHeight:0.###}H{x}V{(row + 1) * rowHeight:0.###}H{start}Z")
                    );
                }
            }
        }

        return path.ToString();
    }
}
