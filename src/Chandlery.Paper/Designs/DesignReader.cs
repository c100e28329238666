using System.Xml;
using System.Xml.Linq;
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
    /// <param name="problems">Collects what is wrong.</param>
    public static DesignArt? Read(
        string xml,
        string template,
        DesignFacts facts,
        BrandKit kit,
        (double Width, double Height) size,
        Problems problems
    )
    {
        string shownAs = template + " (as written out)";
        XElement root;
        try
        {
            var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null };
            using var reader = XmlReader.Create(new StringReader(xml), settings);
            root = XDocument.Load(reader, LoadOptions.SetLineInfo).Root!;
        }
        catch (XmlException error)
        {
            problems.Add(
                new TextPlace(shownAs, error.LineNumber, error.LinePosition),
                $"The template did not write well-formed markup: {error.Message}",
                "Close every element; names are already escaped for you."
            );
            return null;
        }

        var own = new Problems();
        var reading = new MarkupReading(shownAs, own);
        if (root.Name.LocalName != "design")
        {
            reading.Complain(root, $"The outermost element must be 'design', not '{root.Name.LocalName}'.");
        }

        var drawing = new DesignDrawing(facts, kit, size, reading);
        DesignArt art = drawing.Draw(root);
        problems.AddRange(own.Found);
        return own.None ? art : null;
    }

    /// <summary>The elements that templates may write.</summary>
    public static IReadOnlyList<string> Elements { get; } = ["fill", "ornament", "name", "text", "arc", "line", "circle", "logo"];

    /// <summary>The ornaments that templates may ask for.</summary>
    public static IEnumerable<string> OrnamentKinds => OrnamentList.All.Select(o => o.Kind);
}
