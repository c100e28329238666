using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using Chandlery.Core.Law;
using Chandlery.Paper.Blocks;
using Chandlery.Paper.Fonts;
using Chandlery.Yaml;

namespace Chandlery.Paper.Markup;

/// <summary>What reading an element needs: numbers, words and texts, and a place for complaints.</summary>
/// <param name="file">Name to complain under.</param>
/// <param name="problems">Collects what is wrong.</param>
internal sealed class MarkupReading(string file, Problems problems)
{
    private const double Largest = 10_000;

    /// <summary>Where long words may be broken.</summary>
    public WordBreaks Breaks { get; init; } = WordBreaks.None;

    /// <summary>Whether elements know where they stand, which complaints say and nothing else asks.</summary>
    public LoadOptions Places { get; init; } = LoadOptions.SetLineInfo;

    /// <summary>The outermost element of what a template wrote; null, noted, when it is not well-formed.</summary>
    /// <param name="xml">The text.</param>
    /// <param name="name">What the element must be called; another one is noted.</param>
    public XElement? Root(string xml, string name)
    {
        XElement root;
        try
        {
            var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null };
            using var reader = XmlReader.Create(new StringReader(xml), settings);
            root = XDocument.Load(reader, Places | LoadOptions.PreserveWhitespace).Root!;
        }
        catch (XmlException error)
        {
            problems.Add(
                new TextPlace(file, error.LineNumber, error.LinePosition),
                $"The template did not write well-formed markup: {error.Message}",
                "Close every element; names are already escaped for you."
            );
            return null;
        }

        if (root.Name.LocalName != name)
        {
            Complain(root, $"The outermost element must be '{name}', not '{root.Name.LocalName}'.");
        }

        return root;
    }

    /// <summary>Notes what is wrong with an element.</summary>
    public void Complain(XElement element, string what, string remedy = "")
    {
        IXmlLineInfo line = element;
        problems.Add(new TextPlace(file, line.LineNumber, line.LinePosition), what, remedy);
    }

    /// <summary>The number in an attribute; another one where it is missing, and where it is wrong, which is noted.</summary>
    public double Number(XElement element, string attribute, double otherwise)
    {
        return Number(element, attribute, otherwise, NumberStyles.AllowDecimalPoint);
    }

    /// <summary>The same for a number that may lie below 0.</summary>
    public double Signed(XElement element, string attribute, double otherwise) =>
        Number(element, attribute, otherwise, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign);

    private double Number(XElement element, string attribute, double otherwise, NumberStyles styles)
    {
        string? text = (string?)element.Attribute(attribute);
        if (text is null)
        {
            return otherwise;
        }

        if (double.TryParse(text, styles, CultureInfo.InvariantCulture, out double number) && number <= Largest)
        {
            return number;
        }

        Complain(element, $"'{attribute}' must be a number, not '{text}'.");
        return otherwise;
    }

    /// <summary>The words in an attribute.</summary>
    public static string[] Words(XElement element, string attribute) =>
        ((string?)element.Attribute(attribute) ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>The text without line breaks and blanks around it.</summary>
    public static string OneLine(string text) => Fold(text).Trim();

    /// <summary>The texts in an element; what stands in 'b' is bold.</summary>
    public List<Span> Spans(XElement element, Weight weight)
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
                spans.Add(new Span(Breaks.In(folded), own));
            }
        }

        return spans;
    }

    // Line breaks and indentation of the template are no part of the text.
    private static string Fold(string text)
    {
        string[] words = text.Split([' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries);
        string folded = Apostrophes.In(string.Join(' ', words));
        bool before = text.Length > 0 && char.IsWhiteSpace(text[0]);
        bool after = text.Length > 0 && char.IsWhiteSpace(text[^1]);
        return words.Length == 0 ? (text.Length > 0 ? " " : "") : (before ? " " : "") + folded + (after ? " " : "");
    }
}
