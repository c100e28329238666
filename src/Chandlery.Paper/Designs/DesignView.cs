using System.Globalization;
using Chandlery.Paper.Designs.Ornaments;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Designs;

/// <summary>What the templates of designs may use.</summary>
/// <param name="Facts">The candle.</param>
/// <param name="Design">Name of the design.</param>
/// <param name="File">File of the piece in the design's folder.</param>
/// <param name="Piece">The piece.</param>
/// <param name="SizeMm">Its width and height, millimetres.</param>
/// <param name="IsOneInk">Whether it is printed in one ink.</param>
/// <param name="HasLogo">Whether the brand has a logo.</param>
internal sealed record DesignView(
    DesignFacts Facts,
    string Design,
    string File,
    DesignPiece Piece,
    (double Width, double Height) SizeMm,
    bool IsOneInk,
    bool HasLogo
) : ITemplateView
{
    // Margins grow with the label: 4 mm on a tin, 7 on a bowl.
    private const double MarginShare = 0.075;
    private const double SmallType = 2.25;

    // Room at the head of a tag for its hole.
    private const double HoleMm = 8;

    /// <inheritdoc/>
    public string Template => $"designs/{Design}/{File}";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("w", SizeMm.Width),
            ("h", SizeMm.Height),
            ("r", Math.Min(SizeMm.Width, SizeMm.Height) / 2),
            ("m", Math.Clamp(Math.Min(SizeMm.Width, SizeMm.Height) * MarginShare, 2.5, 7)),
            ("small", Math.Clamp(Math.Min(SizeMm.Width, SizeMm.Height) / 70 * SmallType, 1.9, 3.2)),
            ("top", Piece == DesignPiece.Tag ? HoleMm : 0.0),
            ("piece", Piece.ToString().ToLowerInvariant()),
            ("name", Facts.Name),
            ("maker", Facts.MakerName),
            ("monogram", Facts.Monogram),
            ("strap", Facts.StrapLine),
            ("kind", Facts.Kind),
            ("scents", Facts.Scents),
            ("quantity", Facts.Quantity),
            ("wicks", $"{Facts.Wicks.ToString(CultureInfo.InvariantCulture)} {Facts.Words.Wicks}"),
            ("burn", Facts.BurnHours > 0 ? $"{Facts.BurnHours.ToString("0.#", CultureInfo.InvariantCulture)} {Facts.Words.Hours}" : ""),
            ("batch", Facts.Batch),
            ("ring", Facts.ShowsShares ? $"○ {Tideline.RingPercent(Facts.Parts.Count).ToString(CultureInfo.InvariantCulture)} %" : ""),
            ("main_pair", MainPair()),
            ("one_ink", IsOneInk),
            ("has_logo", HasLogo),
        ];

    private string MainPair() =>
        Facts.Parts.Count < 2 ? Facts.Scents
        : Facts.ShowsShares ? $"{Facts.Parts[0].Name} {Percent(0)} : {Percent(1)} {Facts.Parts[1].Name}"
        : $"{Facts.Parts[0].Name}, {Facts.Parts[1].Name}";

    private string Percent(int part) => Math.Round(Facts.Parts[part].Share * 100).ToString(CultureInfo.InvariantCulture);
}
