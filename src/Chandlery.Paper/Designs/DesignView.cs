using System.Globalization;
using Chandlery.Paper.Designs.Ornaments;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Designs;

/// <summary>What the templates of designs may use. Lengths are millimetres; texts that do not apply are empty.</summary>
internal sealed record DesignView : ITemplateView
{
    // Margins grow with the label: 4 mm on a tin, 7 on a bowl.
    private const double MarginShare = 0.075;
    private const double NarrowestMarginMm = 2.5;
    private const double WidestMarginMm = 7;

    // Small lines grow with it too, from what can just be read.
    private const double SmallShare = 0.032;
    private const double SmallestTypeMm = 1.9;
    private const double LargestSmallTypeMm = 3.2;

    private const double RoomyMm = 46;

    // Room at the head of a tag for its hole.
    private const double HoleMm = 8;

    /// <summary>Width of the piece.</summary>
    public required double Width { get; init; }

    /// <summary>Its height.</summary>
    public required double Height { get; init; }

    /// <summary>Half of the smaller of the two.</summary>
    public required double Radius { get; init; }

    /// <summary>Room that type keeps from edges.</summary>
    public required double Margin { get; init; }

    /// <summary>Type size of small lines.</summary>
    public required double Small { get; init; }

    /// <summary>Room at the head that a tag's hole takes.</summary>
    public required double Top { get; init; }

    /// <summary>Whether three things find room beside each other; on a narrower piece the maker goes first.</summary>
    public required bool Roomy { get; init; }

    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>Who it is by.</summary>
    public required string Maker { get; init; }

    /// <summary>One to three letters.</summary>
    public required string Monogram { get; init; }

    /// <summary>A line under the name.</summary>
    public required string Strap { get; init; }

    /// <summary>What it is.</summary>
    public required string Kind { get; init; }

    /// <summary>How it smells.</summary>
    public required string Scents { get; init; }

    /// <summary>Net quantity with its unit.</summary>
    public required string Quantity { get; init; }

    /// <summary>Number of wicks with the word.</summary>
    public required string Wicks { get; init; }

    /// <summary>Hours that it burns with the word.</summary>
    public required string Burn { get; init; }

    /// <summary>Batch code.</summary>
    public required string Batch { get; init; }

    /// <summary>What a ring of height stands for, where the maker shows shares.</summary>
    public required string Ring { get; init; }

    /// <summary>The two main oils, with their shares where the maker shows them.</summary>
    public required string MainPair { get; init; }

    /// <summary>Whether it is printed in one ink.</summary>
    public required bool OneInk { get; init; }

    /// <summary>Whether the brand has a logo.</summary>
    public required bool HasLogo { get; init; }

    /// <summary>The template of the piece.</summary>
    public required string Template { get; init; }

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("width", Width),
            ("height", Height),
            ("radius", Radius),
            ("margin", Margin),
            ("small", Small),
            ("top", Top),
            ("roomy", Roomy),
            ("name", Name),
            ("maker", Maker),
            ("monogram", Monogram),
            ("strap", Strap),
            ("kind", Kind),
            ("scents", Scents),
            ("quantity", Quantity),
            ("wicks", Wicks),
            ("burn", Burn),
            ("batch", Batch),
            ("ring", Ring),
            ("main_pair", MainPair),
            ("one_ink", OneInk),
            ("has_logo", HasLogo),
        ];

    /// <summary>The view of a candle for a piece.</summary>
    public static DesignView Of(DesignFacts facts, string template, DesignPiece piece, (double Width, double Height) sizeMm, BrandKit kit)
    {
        double across = Math.Min(sizeMm.Width, sizeMm.Height);
        return new DesignView
        {
            Width = sizeMm.Width,
            Height = sizeMm.Height,
            Radius = across / 2,
            Margin = Math.Clamp(across * MarginShare, NarrowestMarginMm, WidestMarginMm),
            Small = Math.Clamp(across * SmallShare, SmallestTypeMm, LargestSmallTypeMm),
            Top = piece == DesignPiece.Tag ? HoleMm : 0,
            Roomy = sizeMm.Width >= RoomyMm,
            Name = facts.Name,
            Maker = facts.MakerName,
            Monogram = facts.Monogram,
            Strap = facts.StrapLine,
            Kind = facts.Kind,
            Scents = facts.Scents,
            Quantity = facts.Quantity,
            Wicks = facts.Wicks > 0 ? $"{facts.Wicks.ToString(CultureInfo.InvariantCulture)} {facts.Words.Wicks}" : "",
            Burn = facts.BurnHours > 0 ? $"{facts.Figures.Declared(facts.BurnHours)} {facts.Words.Hours}" : "",
            Batch = facts.Batch,
            Ring = facts.ShowsShares ? $"○ {facts.Figures.Declared(Tideline.RingPercent(facts.Parts.Count))} %" : "",
            MainPair = MainPairOf(facts),
            OneInk = kit.Brand?.OneInk ?? false,
            HasLogo = kit.Logo is not null,
            Template = template,
        };
    }

    private static string MainPairOf(DesignFacts facts)
    {
        if (facts.Parts.Count < 2)
        {
            return facts.Scents;
        }

        (BlendPart first, BlendPart second) = (facts.Parts[0], facts.Parts[1]);
        return facts.ShowsShares ? $"{first.Name} {Percent(first)} : {Percent(second)} {second.Name}" : $"{first.Name}, {second.Name}";
    }

    private static string Percent(BlendPart part) => Math.Round(part.Share * 100).ToString(CultureInfo.InvariantCulture);
}
