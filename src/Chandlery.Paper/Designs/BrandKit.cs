using Chandlery.Core.Declared;
using Chandlery.Paper.Fonts;
using Chandlery.Yaml;

namespace Chandlery.Paper.Designs;

/// <summary>What a brand's fronts are drawn with.</summary>
/// <param name="Brand">The declaration; null for a maker without one.</param>
/// <param name="NameFace">The maker's face for names; null for the design's own.</param>
/// <param name="Logo">The logo; null for none.</param>
public sealed record BrandKit(Brand? Brand, Face? NameFace, LogoArt? Logo)
{
    /// <summary>What is wrong with its files: no front is drawn with it then.</summary>
    public IReadOnlyList<Problem> Problems { get; init; } = [];

    /// <summary>A maker without a brand.</summary>
    public static BrandKit None { get; } = new(null, null, null);
}
