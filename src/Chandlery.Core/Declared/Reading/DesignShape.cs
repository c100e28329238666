using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of the front that a candle asks for.</summary>
internal static class DesignShape
{
    public static readonly TextField Name = new("name", "Name of the design; 'chandlery designs' lists them.", "tideline");

    public static readonly ChoiceField Form = new(
        "as",
        "one (default: front and law on one label), pair (a front and a back), wrap (a band around the vessel).",
        ["one", "pair", "wrap"]
    );

    public static readonly TextField StrapLine = new("strapLine", "A line under the name.", "Poured by hand");
    public static readonly NumberField BurnHours = new("burnHours", "Hours that it burns, as you tested it.", "45", 0, 1000);
    public static readonly TextField ScentNotes = new("scentNotes", "How it smells, in your words.", "orange peel, salt, smoke");

    public static readonly Shape Design = new("design", "The front.", [Name, Form, StrapLine, BurnHours, ScentNotes]);
}
