using Chandlery.Paper.Barcodes;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Blocks;

/// <summary>QR code and bar code, side by side.</summary>
/// <param name="QrText">What the QR code holds; empty for none.</param>
/// <param name="Gtin">GTIN-13 of the bar code; empty for none.</param>
public sealed record Codes(string QrText, string Gtin) : Block
{
    // The tail of a "g" in a large quantity hangs down to the next block: the bars keep clear of it, as the QR code does by its own margin.
    private const double ClearAboveMm = 1;

    internal static readonly BlockKind Kind = new(
        "codes",
        (element, _) => new Codes((string?)element.Attribute("qr") ?? "", (string?)element.Attribute("gtin") ?? "")
    );

    /// <inheritdoc/>
    internal override void Lay(Flow flow)
    {
        double typeSize = flow.Sizes.TypeSizeMm;
        double qrSide = QrText.Length > 0 ? CodeDrawing.QrSideMm(QrText) : 0;
        double eanHeight = Gtin.Length > 0 ? ClearAboveMm + CodeDrawing.EanBarsMm + (typeSize * flow.Sizes.LineSpacing) : 0;
        double eanWidth = Gtin.Length > 0 ? CodeDrawing.EanWidthMm : 0;
        double height = Math.Max(qrSide, eanHeight);
        if (height == 0)
        {
            return;
        }

        flow.FindRoom(qrSide + eanWidth, height);
        if (flow.Region.Edges(flow.Y, flow.Y + height) is not { } free)
        {
            flow.Y += height;
            flow.Overflows(qrSide + eanWidth);
            return;
        }

        flow.Overflows(qrSide + eanWidth - (free.Right - free.Left));
        double top = flow.Y;
        double first = flow.Region.IsRound ? (free.Left + free.Right - (qrSide + eanWidth)) / 2 : free.Left;
        if (qrSide > 0)
        {
            flow.Place(() => CodeDrawing.Qr(QrText, first, top, qrSide), new Mark("QR code", first, top, qrSide, qrSide));
        }

        if (eanWidth > 0)
        {
            double left = first + qrSide;
            double bars = top + ClearAboveMm;
            flow.Place(() => CodeDrawing.Ean13(Gtin, left, bars), new Mark("EAN-13", left, bars, eanWidth, CodeDrawing.EanBarsMm));
            flow.PlaceText(
                [new Piece(Gtin, Weight.Regular, false)],
                typeSize,
                Align.Centre,
                bars + CodeDrawing.EanBarsMm,
                (_, _) => [(left, left + eanWidth)]
            );
        }

        flow.Y += height;
    }
}
