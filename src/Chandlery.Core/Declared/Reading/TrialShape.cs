using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of a trial.</summary>
internal static class TrialShape
{
    private const double MostStars = 5;

    public static readonly TextField Name = new("name", "What you call it.", "Fig and rain, two to one") { Needed = true };
    public static readonly DayField On = new("on", "The day on which you smelt it.") { Needed = true };

    public static readonly GroupsField Oils = PourShape.WeighedOils with
    {
        About = "The oils, each in grams, millilitres or drops.",
        NotEmpty = true,
    };

    public static readonly TextField Smells = new("smells", "How it smells, in your words.", "green, then wet stone");

    public static readonly NumberField Stars = new("stars", "How well you like it, 1 to 5.", "4", 1, MostStars)
    {
        LowAllowed = true,
        Whole = true,
    };

    public static readonly TextField Wax = CandleShape.Wax with
    {
        About = "The wax that it is meant for, its file name without .yaml.",
        Needed = false,
    };

    public static readonly GroupField Load = CandleShape.Load with { About = "The load that it is meant for." };

    public static readonly Shape Trial = new("trial", "A blend tried by nose", [Name, On, Oils, Smells, Stars, Wax, Load]);
}
