using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.SafetyFiles.TechnicalFiles;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Papers;

/// <summary>What a paper is made of.</summary>
/// <param name="Assessment">The candle.</param>
/// <param name="Language">Language of a paper that is made in one at a time.</param>
/// <param name="Wax">Its wax or blend of waxes, as declared.</param>
/// <param name="Lawbook">Law and words.</param>
/// <param name="Shop">Templates and drawings.</param>
/// <param name="Settings">What the user chose.</param>
public sealed record PaperRequest(
    Assessment Assessment,
    Language Language,
    Wax Wax,
    Lawbook Lawbook,
    PaperShop Shop,
    PaperSettings Settings
)
{
    /// <summary>Opens what fronts are drawn with, when a front is asked for: the other papers need no logo and no face.</summary>
    public Lazy<BrandKit> OpensBrand { get; init; } = new(BrandKit.None);

    /// <summary>What fronts are drawn with.</summary>
    public BrandKit Brand
    {
        get => OpensBrand.Value;
        init => OpensBrand = new Lazy<BrandKit>(value);
    }

    /// <summary>Opens the picture that the candle declares, when a paper shows it; null for none.</summary>
    public Lazy<Scene?> OpensPicture { get; init; } = new((Scene?)null);

    /// <summary>Looks for what a technical file is compared with; null where nobody looks.</summary>
    public Lazy<EarlierVersion?> FindsEarlier { get; init; } = new((EarlierVersion?)null);

    /// <summary>Finds the line that names the register's last entry, when a paper prints it; null where there is none.</summary>
    public Lazy<string?> FindsRegisterHead { get; init; } = new((string?)null);

    /// <summary>Name of the design of the candle's front; null for none.</summary>
    public string? Design => Assessment.Candle.Design?.Name ?? Brand.Brand?.Design;

    /// <summary>All that the maker declares.</summary>
    public required Catalogue Catalogue { get; init; }
}
