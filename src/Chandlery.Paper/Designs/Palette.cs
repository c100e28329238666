using Chandlery.Core.Declared;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs;

/// <summary>The inks of a front.</summary>
public sealed class Palette
{
    private static readonly Dictionary<Scent, Ink> OwnNotes = new()
    {
        [Scent.Citrus] = Ink.Of("#E2932E"),
        [Scent.Leaf] = Ink.Of("#7C9A55"),
        [Scent.Flower] = Ink.Of("#C9748A"),
        [Scent.Spice] = Ink.Of("#B5502F"),
        [Scent.Wood] = Ink.Of("#8C6A4F"),
        [Scent.Resin] = Ink.Of("#A8803A"),
        [Scent.Smoke] = Ink.Of("#A3857A"),
        [Scent.Sea] = Ink.Of("#6F9AA8"),
        [Scent.Sweet] = Ink.Of("#D8B074"),
        [Scent.Clean] = Ink.Of("#9DB7B5"),
    };

    private readonly Brand? brand;

    /// <summary>The inks of a brand.</summary>
    /// <param name="brand">The brand; null for the program's own inks.</param>
    public Palette(Brand? brand)
    {
        this.brand = brand;
        IsOneInk = brand?.OneInk ?? false;
        Paper = Of(brand?.Paper) ?? Ink.White;
    }

    /// <summary>True when everything is printed in <see cref="Deep"/>.</summary>
    public bool IsOneInk { get; }

    /// <summary>Colour of the stock.</summary>
    public Ink Paper { get; }

    /// <summary>Dark grounds and large type; a design brings its own where the brand has none.</summary>
    public Ink Deep(Ink own) => Of(brand?.Deep) ?? (IsOneInk ? Ink.Black : own);

    /// <summary>Light grounds, and type on dark ones.</summary>
    public Ink Light(Ink own) => IsOneInk ? Paper : Of(brand?.Light) ?? own;

    /// <summary>What stands out.</summary>
    public Ink Accent(Ink own) => IsOneInk ? Deep(own) : Of(brand?.Accent) ?? own;

    /// <summary>The ink of a note.</summary>
    public Ink Note(Scent note) => brand?.Notes.TryGetValue(note, out Tint? tint) is true && Of(tint) is { } ink ? ink : OwnNotes[note];

    private static Ink? Of(Tint? tint)
    {
        if (tint is null)
        {
            return null;
        }

        Ink ink = Ink.Of(tint.Screen);
        Cmyk process = tint.Process is [var cyan, var magenta, var yellow, var key] ? new Cmyk(cyan, magenta, yellow, key) : ink.Process;
        return ink with { Process = process, Spot = tint.Spot };
    }
}
