using System.Globalization;
using Chandlery.Paper.Designs.Ornaments;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Designs;

/// <summary>What the templates of designs may use. Lengths are millimetres; texts that do not apply are empty.</summary>
/// <param name="Width">Width of the piece.</param>
/// <param name="Height">Its height.</param>
/// <param name="Radius">Half of the smaller of the two.</param>
/// <param name="Margin">Room that type keeps from edges.</param>
/// <param name="Small">Type size of small lines.</param>
/// <param name="Top">Room at the head that a tag's hole takes.</param>
/// <param name="Roomy">Whether three things find room beside each other; on a narrower piece the maker goes first.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Maker">Who it is by.</param>
/// <param name="Monogram">One to three letters.</param>
/// <param name="Strap">A line under the name.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Scents">How it smells.</param>
/// <param name="Quantity">Net quantity with its unit.</param>
/// <param name="Wicks">Number of wicks with the word.</param>
/// <param name="Burn">Hours that it burns with the word.</param>
/// <param name="Batch">Batch code.</param>
/// <param name="Ring">What a ring of height stands for, where the maker shows shares.</param>
/// <param name="MainPair">The two main oils, with their shares where the maker shows them.</param>
/// <param name="OneInk">Whether it is printed in one ink.</param>
/// <param name="HasLogo">Whether the brand has a logo.</param>
internal sealed record DesignView(
    double Width,
    double Height,
    double Radius,
    double Margin,
    double Small,
    double Top,
    bool Roomy,
    string Name,
    string Maker,
    string Monogram,
    string Strap,
    string Kind,
    string Scents,
    string Quantity,
    string Wicks,
    string Burn,
    string Batch,
    string Ring,
    string MainPair,
    bool OneInk,
    bool HasLogo
) : ITemplateView
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
        return new DesignView(
            sizeMm.Width,
            sizeMm.Height,
            across / 2,
            Math.Clamp(across * MarginShare, NarrowestMarginMm, WidestMarginMm),
            Math.Clamp(across * SmallShare, SmallestTypeMm, LargestSmallTypeMm),
            piece == DesignPiece.Tag ? HoleMm : 0,
            sizeMm.Width >= RoomyMm,
            facts.Name,
            facts.MakerName,
            facts.Monogram,
            facts.StrapLine,
            facts.Kind,
            facts.Scents,
            facts.Quantity,
            facts.Wicks > 0 ? $"{facts.Wicks.ToString(CultureInfo.InvariantCulture)} {facts.Words.Wicks}" : "",
            facts.BurnHours > 0 ? $"{facts.Figures.Declared(facts.BurnHours)} {facts.Words.Hours}" : "",
            facts.Batch,
            facts.ShowsShares ? $"○ {facts.Figures.Declared(Tideline.RingPercent(facts.Parts.Count))} %" : "",
            MainPairOf(facts),
            kit.Brand?.OneInk ?? false,
            kit.Logo is not null
        )
        {
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
