using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of a burn test.</summary>
internal static class TestShape
{
    private const double HottestCelsius = 1000;
    private const double LongestMm = 1000;

    public static readonly string[] SootWords = ["nothing", "little", "much"];

    public static readonly DayField On = new("on", "The day of the last burn.") { Needed = true };
    public static readonly TextField By = new("by", "Who burnt and measured.", "M. Hale") { Needed = true };
    public static readonly TextField Vessel = CandleShape.Vessel with
    {
        About = "The vessel that was tested; left out of what stands by itself, such as a pillar.",
    };
    public static readonly TextField Wax = CandleShape.Wax with { About = "The wax that was tested.", Needed = true };
    public static readonly NumberField WickCount = CandleShape.WickCount;
    public static readonly TextField WickKind = CandleShape.WickKind;

    public static readonly GroupField Wicks = new(
        "wicks",
        "The wicks that were tested.",
        new Shape("testedWicks", "The wicks that were tested.", [WickCount, WickKind])
    )
    {
        Needed = true,
    };

    public static readonly NumberField OilPercent = new("oilPercent", "Share of all oils in the tested candle, percent.", "6", 0, 100)
    {
        LowAllowed = true,
        Needed = true,
    };

    public static readonly NumberField Room = new("roomCelsius", "Temperature of the room, °C.", "21", 0, 50);
    public static readonly TextField Name = new("name", "How it is told from the others.", "A") { Needed = true };
    public static readonly NumberField Hours = new("hours", "How long.", "4", 0, 1000) { Needed = true };
    public static readonly NumberField Flame = new("flameMm", "Height of the highest flame, mm.", "32", 0, LongestMm);
    public static readonly NumberField Pool = new("poolMm", "Diameter of the melt pool, mm.", "68", 0, LongestMm);
    public static readonly NumberField Heat = new(
        "vesselCelsius",
        "Highest temperature of the vessel's outside, °C.",
        "52",
        0,
        HottestCelsius
    );
    public static readonly ChoiceField Soot = new("soot", "Soot seen by eye.", SootWords);
    public static readonly FlagField Relit = new("relit", "Whether it lit again by itself after it was put out.");

    public static readonly GroupsField Burns = new(
        "burns",
        "Its burns, in their order.",
        new Shape("burn", "One burn; what was not measured is left out.", [Hours, Flame, Pool, Heat, Soot, Relit])
    )
    {
        Needed = true,
        NotEmpty = true,
    };

    public static readonly FlagField Fell = new("fellOnSlope", "Whether it fell on the slope that 'limits' names.");
    public static readonly FlagField Whole = new("vesselWhole", "Whether the vessel was whole at the end.");
    public static readonly FlagField WentOut = new("wentOut", "Whether the flame went out by itself at the end.");

    public static readonly GroupsField Samples = new(
        "samples",
        "The candles that were burnt.",
        new Shape("burnSample", "A candle that was burnt.", [Name, Burns, Fell, Whole, WentOut])
    )
    {
        Needed = true,
        NotEmpty = true,
    };

    public static readonly NumberField FlameLimit = Flame with { About = "The highest flame allowed, mm." };
    public static readonly NumberField HeatLimit = Heat with { About = "The highest temperature of the vessel allowed, °C." };
    public static readonly ChoiceField SootLimit = new("soot", "The most soot allowed.", SootWords);
    public static readonly NumberField Slope = new("slopeDegrees", "The slope on which it must not fall, degrees.", "10", 0, 45);

    public static readonly GroupField Limits = new(
        "limits",
        "Your own limits, by which the verdict is given: those of the standards are not at hand.",
        new Shape("burnLimits", "Own limits for burn tests.", [FlameLimit, HeatLimit, SootLimit, Slope])
    );

    public static readonly TextsField Photographs = new("photographs", "Names of photographs.") { Endings = [".jpg", ".jpeg", ".png"] };

    public static readonly Shape Test = new(
        "test",
        "A burn test of a candle",
        [BatchShape.Candle, On, By, Vessel, Wax, Wicks, OilPercent, Room, Samples, Limits, Photographs]
    );
}
