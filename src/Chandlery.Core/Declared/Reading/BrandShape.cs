using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of a brand.</summary>
internal static class BrandShape
{
    public static readonly TextField Design = new("design", "Design of candles that name none.", "tideline");
    public static readonly TextField Name = new("name", "Name on the front, where it is not the maker's.", "the name on the front");
    public static readonly TextField Monogram = new("monogram", "One to three letters for seals.", "TC") { Pattern = @"^\S{1,3}$" };
    public static readonly TextField StrapLine = new("strapLine", "A line under the candle's name.", "Poured by hand");
    public static readonly TextField Logo = new("logo", "File of the logo beside this one, SVG or PNG.", "logo.svg")
    {
        Endings = [".svg", ".png"],
    };
    public static readonly EitherField Paper = TintShape.Of("paper", "Colour of the stock that fronts are printed on.");
    public static readonly EitherField Deep = TintShape.Of("deep", "Colour of dark grounds and large type.");
    public static readonly EitherField Light = TintShape.Of("light", "Colour of light grounds, and of type on dark ones.");
    public static readonly EitherField Accent = TintShape.Of("accent", "Colour of what stands out.");
    public static readonly MapField Notes = new("notes", "Colours of notes, such as citrus.", TintShape.Of("", ""));
    public static readonly TextField NameFont = new("nameFont", "Font file for names beside this one, TrueType or OpenType.", "Name.ttf")
    {
        Endings = [".ttf", ".otf"],
    };

    public static readonly FlagField ShowsShares = new(
        "showsShares",
        "Yes when ornaments may be drawn from the shares of your oils, so that others could read them off."
    );

    public static readonly FlagField OneInk = new("oneInk", "Yes to print fronts in one ink.");

    public static readonly Shape Brand = new(
        "brand",
        "How your labels look",
        [Design, Name, Monogram, StrapLine, Logo, Paper, Deep, Light, Accent, Notes, NameFont, ShowsShares, OneInk]
    );
}
