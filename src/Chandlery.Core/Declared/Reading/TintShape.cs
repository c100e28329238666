using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of a colour.</summary>
internal static class TintShape
{
    /// <summary>What a colour of the screen looks like.</summary>
    public const string Hex = "^#[0-9A-Fa-f]{6}$";

    public static readonly TextField Screen = new("screen", "As screens show it.", "'#14394A'") { Needed = true, Pattern = Hex };

    public static readonly TextField Cmyk = new("cmyk", "Cyan, magenta, yellow and black in percent, with blanks.", "75 25 0 70")
    {
        Pattern = "^([0-9]{1,3} ){3}[0-9]{1,3}$",
    };

    public static readonly TextField Spot = new("spot", "Name of a spot ink that is printed instead.", "Gold foil")
    {
        Pattern = "^[A-Za-z0-9][A-Za-z0-9 ]{0,30}$",
    };

    /// <summary>A colour under a name: a text, or a group with inks.</summary>
    public static EitherField Of(string key, string about) =>
        new(
            key,
            about,
            [
                new TextField(key, about, "'#14394A'") { Pattern = Hex },
                new GroupField(key, about, new Shape("tint", "A colour.", [Screen, Cmyk, Spot])),
            ]
        );
}
