using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>The pieces of a design, by the words with which people ask for them.</summary>
public static class DesignPieces
{
    // Sizes where a vessel tells none (our own).
    private const double FrontWidthMm = 70;
    private const double FrontHeightMm = 90;
    private const double LidMm = 60;
    private const double LidEdgeMm = 3;
    private const double TagWidthMm = 50;
    private const double TagHeightMm = 85;
    private const double TagHoleMm = 5;
    private const double StripLengthMm = 160;
    private const double StripWidthMm = 30;
    private const double SamplerMm = 45;

    /// <summary>The words.</summary>
    public static IReadOnlyList<string> Words { get; } = ["one", "pair", "wrap", "front", "lid", "base", "tag", "strip", "sampler"];

    /// <summary>A piece; null where there is none for this candle, and where there are problems.</summary>
    public static PaperDocument? Draw(PaperRequest request, string design, string piece, Problems problems) =>
        piece switch
        {
            "one" => WithLaw(request, design, DesignForm.One, problems),
            "pair" => WithLaw(request, design, DesignForm.Pair, problems),
            "wrap" => WithLaw(request, design, DesignForm.Wrap, problems),
            "lid" => Art(request, design, DesignPiece.Lid, (Across(request), Across(request)), problems),
            "base" => Art(request, design, DesignPiece.Base, (Across(request), Across(request)), problems),
            "tag" => Art(request, design, DesignPiece.Tag, (TagWidthMm, TagHeightMm), problems),
            "strip" => Art(request, design, DesignPiece.Strip, (StripLengthMm, StripWidthMm), problems),
            "sampler" => Art(request, design, DesignPiece.Sampler, (SamplerMm, SamplerMm), problems),
            _ => Art(request, design, DesignPiece.Front, (FrontWidthMm, FrontHeightMm), problems),
        };

    /// <summary>Why there is no such piece, as a sentence.</summary>
    public static string WhyNot(PaperRequest request, string piece) =>
        request.Assessment.StopsSale ? "something stops the sale; the assessment says what."
        : piece == "wrap" && request.Assessment.Vessel.Outer is null ? "the vessel's outer size is not declared."
        : "front and legal panel find no room together.";

    private static PaperDocument? WithLaw(PaperRequest request, string design, DesignForm form, Problems problems) =>
        request.Assessment.StopsSale ? null : DesignedLabel.Make(request, design, form, problems)?.Document;

    private static PaperDocument? Art(
        PaperRequest request,
        string design,
        DesignPiece piece,
        (double Width, double Height) size,
        Problems problems
    )
    {
        DesignFacts facts = DesignFactsMaker.Make(request.Assessment, request.Brand);
        if (request.Shop.Designs.Draw(design, piece, facts, request.Brand, size, problems) is not { } art)
        {
            return null;
        }

        bool isRound = piece is DesignPiece.Lid or DesignPiece.Base;
        string? cut =
            isRound ? new Pen().Circle(size.Width / 2, size.Height / 2, size.Width / 2).ToString()
            : piece == DesignPiece.Tag
                ? new Pen().Box(0, 0, size.Width, size.Height).Circle(size.Width / 2, TagHoleMm, TagHoleMm / 2).ToString()
            : null;
        double bleed = DesignedLabel.BleedMm;
        Pen area = isRound
            ? new Pen().Circle(size.Width / 2, size.Height / 2, (size.Width / 2) + bleed)
            : new Pen().Box(-bleed, -bleed, size.Width + (2 * bleed), size.Height + (2 * bleed));
        List<SceneItem> items = [.. art.Within(area, 0, 0)];
        if (piece == DesignPiece.Tag)
        {
            // The hole shows on screen and proof; the press has it as a cut.
            items.Add(Shading.Fill(new Pen().Circle(size.Width / 2, TagHoleMm, TagHoleMm / 2), Ink.White));
        }

        var scene = new Scene(size.Width, size.Height, items, []) { BleedMm = bleed, CutPath = cut };
        return new PaperDocument(request.Assessment.Candle.Name, request.Language.Code, [scene]);
    }

    private static double Across(PaperRequest request)
    {
        Assessment a = request.Assessment;
        return a.Vessel.Outer?.Section is RoundSection round ? Math.Clamp(round.Diameter.Value - (2 * LidEdgeMm), 25, 120) : LidMm;
    }
}
