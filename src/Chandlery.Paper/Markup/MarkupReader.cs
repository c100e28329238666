using System.Xml.Linq;
using Chandlery.Core.Law;
using Chandlery.Paper.Blocks;
using Chandlery.Yaml;

namespace Chandlery.Paper.Markup;

/// <summary>Reads the small XML that templates write: the root is paper, and every kind of block reads its own element.</summary>
public static class MarkupReader
{
    /// <summary>The document, or null when there are problems.</summary>
    /// <param name="xml">What the template wrote.</param>
    /// <param name="template">The template's name, for messages.</param>
    /// <param name="problems">Collects what is wrong.</param>
    /// <param name="breaks">Where its long words may be broken; null for nowhere.</param>
    public static MarkupDocument? Read(string xml, string template, Problems problems, WordBreaks? breaks = null)
    {
        // Where an element stands is asked only of what is wrong: most documents are read without it.
        var own = new Problems();
        MarkupDocument? document = Read(xml, template, own, breaks, LoadOptions.None);
        if (own.None)
        {
            return document;
        }

        Read(xml, template, problems, breaks, LoadOptions.SetLineInfo);
        return null;
    }

    private static MarkupDocument? Read(string xml, string template, Problems problems, WordBreaks? breaks, LoadOptions places)
    {
        var reading = new MarkupReading(template + " (as written out)", problems) { Breaks = breaks ?? WordBreaks.None, Places = places };
        if (reading.Root(xml, "paper") is not { } root)
        {
            return null;
        }

        return new MarkupDocument
        {
            Title = (string?)root.Attribute("title") ?? "",
            Language = (string?)root.Attribute("lang") ?? "en",
            WidthMm = reading.Number(root, "width", 0),
            HeightMm = reading.Number(root, "height", 0),
            MarginMm = reading.Number(root, "margin", 2.5),
            XHeightMm = reading.Number(root, "x-height", 2),
            SmallestXHeightMm = reading.Number(root, "smallest-x-height", 0),
            Blocks = [.. root.Elements().Select(e => ReadBlock(e, reading)).OfType<Block>()],
            InsetMm = reading.Number(root, "inset", 0),
        };
    }

    private static Block? ReadBlock(XElement element, MarkupReading reading)
    {
        string name = element.Name.LocalName;
        if (BlockKinds.Find(name) is { } kind)
        {
            return kind.Read(element, reading);
        }

        reading.Complain(
            element,
            $"'{name}' is no element of this markup.",
            $"Known: {string.Join(", ", BlockKinds.All.Select(k => k.Element))}."
        );
        return null;
    }
}
