using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using Chandlery.Paper.Fonts;
using Chandlery.Yaml;

namespace Chandlery.Paper.Markup;

/// <summary>
/// Reads the small XML that templates write. Elements: paper (the root), p (paragraph, with b inside), pictograms,
/// symbols and messages (with m inside), gap, rule.
/// </summary>
public static class MarkupReader
{
    /// <summary>The document, or null when there are problems.</summary>
    /// <param name="xml">What the template wrote.</param>
    /// <param name="template">The template's name, for messages.</param>
    /// <param name="problems">Collects what is wrong.</param>
    public static MarkupDocument? Read(string xml, string template, Problems problems)
    {
        string shownAs = template + " (as written out)";
        XElement root;
        try
        {
            var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null };
            using var reader = XmlReader.Create(new StringReader(xml), settings);
            root = XDocument.Load(reader, LoadOptions.SetLineInfo | LoadOptions.PreserveWhitespace).Root!;
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
        var context = new Context(shownAs, own);
        if (root.Name.LocalName != "paper")
        {
            context.Complain(root, $"The outermost element must be 'paper', not '{root.Name.LocalName}'.");
        }

        var document = new MarkupDocument(
            (string?)root.Attribute("title") ?? "",
            (string?)root.Attribute("lang") ?? "en",
            context.Number(root, "width", 0),
            context.Number(root, "height", 0),
            context.Number(root, "margin", 2.5),
            context.Number(root, "x-height", 2),
            context.Number(root, "smallest-x-height", 0),
            [.. root.Elements().Select(e => ReadBlock(e, context)).OfType<Block>()]
        );
        problems.AddRange(own.Found);
        return own.None ? document : null;
    }

    private static Block? ReadBlock(XElement element, Context context)
    {
        switch (element.Name.LocalName)
        {
            case "p":
                return ReadParagraph(element, context);
            case "pictograms":
                return new Pictograms(Words(element, "codes"));
            case "symbols":
                return new SymbolRow(
                    [.. element.Elements("s").Select(s => ((string?)s.Attribute("name") ?? "", s.Value.Trim()))],
                    context.Number(element, "side", 6)
                );
            case "messages":
                return new Messages(
                    [.. element.Elements("m").Select(m => ((string?)m.Attribute("symbol") ?? "", OneLine(m.Value)))],
                    (int)context.Number(element, "columns", 1),
                    context.Number(element, "side", 8)
                );
            case "codes":
                return new Codes((string?)element.Attribute("qr") ?? "", (string?)element.Attribute("gtin") ?? "");
            case "table":
                return ReadTable(element, context);
            case "gap":
                return new Gap(context.Number(element, "size", 0.5));
            case "rule":
                return new Rule();
            default:
                context.Complain(
                    element,
                    $"'{element.Name.LocalName}' is no element of this markup.",
                    "Known: p, pictograms, symbols, messages, codes, table, gap, rule."
                );
                return null;
        }
    }

    private static Table? ReadTable(XElement element, Context context)
    {
        double[] widths = [.. Words(element, "widths").Select(w => double.TryParse(w, CultureInfo.InvariantCulture, out double n) ? n : 0)];
        if (widths.Length == 0 || widths.Any(w => w <= 0))
        {
            context.Complain(element, "A table needs the widths of its columns.", "Write widths=\"30 20 50\".");
            return null;
        }

        var rows = new List<TableRow>();
        foreach (XElement row in element.Elements("tr"))
        {
            bool heading = row.Elements("th").Any();
            List<IReadOnlyList<Span>> cells =
            [
                .. row.Elements().Select(c => (IReadOnlyList<Span>)ReadSpans(c, heading ? Weight.Bold : Weight.Regular)),
            ];
            if (cells.Count != widths.Length)
            {
                context.Complain(row, $"This row has {cells.Count} cells, but the table has {widths.Length} columns.");
                return null;
            }

            rows.Add(new TableRow(cells, heading));
        }

        return new Table([.. widths.Select(w => w / widths.Sum())], rows);
    }

    private static Paragraph? ReadParagraph(XElement element, Context context)
    {
        List<Span> spans = ReadSpans(element, (string?)element.Attribute("weight") == "bold" ? Weight.Bold : Weight.Regular);
        if (spans.All(s => s.Text.Trim().Length == 0))
        {
            return null;
        }

        Align align = (string?)element.Attribute("align") switch
        {
            null or "left" => Align.Left,
            "centre" => Align.Centre,
            "right" => Align.Right,
            _ => Wrong(),
        };
        return new Paragraph(spans, context.Number(element, "size", 1), context.Number(element, "figure", 0), align);

        Align Wrong()
        {
            context.Complain(element, "'align' must be left, centre or right.");
            return Align.Left;
        }
    }

    private static List<Span> ReadSpans(XElement element, Weight weight)
    {
        var spans = new List<Span>();
        foreach (XNode node in element.Nodes())
        {
            (string text, Weight own) = node switch
            {
                XElement { Name.LocalName: "b" } bold => (bold.Value, Weight.Bold),
                XText plain => (plain.Value, weight),
                _ => ("", weight),
            };
            string folded = Fold(text);
            if (folded.Length > 0)
            {
                spans.Add(new Span(folded, own));
            }
        }

        return spans;
    }

    private static string[] Words(XElement element, string attribute) =>
        ((string?)element.Attribute(attribute) ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static string OneLine(string text) => Fold(text).Trim();

    // Line breaks and indentation of the template are no part of the text.
    private static string Fold(string text)
    {
        string[] words = text.Split([' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries);
        string folded = string.Join(' ', words);
        bool before = text.Length > 0 && char.IsWhiteSpace(text[0]);
        bool after = text.Length > 0 && char.IsWhiteSpace(text[^1]);
        return words.Length == 0 ? (text.Length > 0 ? " " : "") : (before ? " " : "") + folded + (after ? " " : "");
    }

    private sealed class Context(string file, Problems problems)
    {
        public void Complain(XElement element, string what, string remedy = "")
        {
            IXmlLineInfo line = element;
            problems.Add(new TextPlace(file, line.LineNumber, line.LinePosition), what, remedy);
        }

        public double Number(XElement element, string attribute, double otherwise)
        {
            string? text = (string?)element.Attribute(attribute);
            if (text is null)
            {
                return otherwise;
            }

            if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number) && number <= 10_000)
            {
                return number;
            }

            Complain(element, $"'{attribute}' must be a number, not '{text}'.");
            return otherwise;
        }
    }
}
