using Chandlery.Paper.Designs.Ornaments;
using Chandlery.Paper.Markup;
using Chandlery.Yaml;

namespace Chandlery.Paper.Designs;

/// <summary>Reads what a design's template wrote: names are set first, then everything is drawn in its order.</summary>
internal static class DesignReader
{
    /// <summary>The art; null when there are problems.</summary>
    /// <param name="xml">What the template wrote.</param>
    /// <param name="template">The template's name, for messages.</param>
    /// <param name="facts">The candle.</param>
    /// <param name="kit">Inks, face and logo.</param>
    /// <param name="size">Width and height, millimetres.</param>
    /// <param name="beyondMm">How far ornaments go on past the edges of their room, millimetres.</param>
    /// <param name="problems">Collects what is wrong.</param>
    public static DesignArt? Read(
        string xml,
        string template,
        DesignFacts facts,
        BrandKit kit,
        (double Width, double Height) size,
        double beyondMm,
        Problems problems
    )
    {
        var own = new Problems();
        var reading = new MarkupReading(template + " (as written out)", own);
        if (reading.Root(xml, "design") is not { } root)
        {
            problems.AddRange(own.Found);
            return null;
        }

        var drawing = new DesignDrawing(facts, kit, size, beyondMm, reading);
        DesignArt art = drawing.Draw(root);
        problems.AddRange(own.Found);
        return own.None ? art : null;
    }

    /// <summary>The elements that templates may write.</summary>
    public static IReadOnlyList<string> Elements { get; } = ["fill", "ornament", "name", "text", "arc", "line", "circle", "logo"];

    /// <summary>The ornaments that templates may ask for.</summary>
    public static IEnumerable<string> OrnamentKinds => OrnamentList.All.Select(o => o.Kind);
}
