using System.Globalization;
using System.Xml.Linq;
using Chandlery.Paper.Blocks;
using Chandlery.Paper.Designs.Ornaments;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs;

/// <summary>Draws the elements of a design's markup.</summary>
internal sealed class DesignDrawing
{
    // Templates reckon; on a piece that is too small for them a room may come out below nothing.
    private const double LeastRoomMm = 1;

    private readonly DesignFacts facts;
    private readonly BrandKit kit;
    private readonly Palette inks;
    private readonly (double Width, double Height) size;
    private readonly double beyondMm;
    private readonly MarkupReading reading;
    private readonly Dictionary<string, PlacedName> names = [];

    /// <summary>Sets up a drawing.</summary>
    public DesignDrawing(DesignFacts facts, BrandKit kit, (double Width, double Height) size, double beyondMm, MarkupReading reading)
    {
        this.facts = facts;
        this.kit = kit;
        this.size = size;
        this.beyondMm = beyondMm;
        this.reading = reading;
        inks = new Palette(kit.Brand);
    }

    /// <summary>Draws everything under the root.</summary>
    public DesignArt Draw(XElement root)
    {
        foreach (XElement name in root.Elements("name"))
        {
            names[(string?)name.Attribute("id") ?? "name"] = SetName(name);
        }

        Ink ground = InkOf(root, "ground", Ink.White);
        return new DesignArt(ground, [.. root.Elements().SelectMany(DrawElement)]);
    }

    private IEnumerable<SceneItem> DrawElement(XElement element)
    {
        switch (element.Name.LocalName)
        {
            case "name":
                return (string?)element.Attribute("shown") == "no" ? [] : names[(string?)element.Attribute("id") ?? "name"].Lines;
            case "ornament":
                return Ornament(element);
            case "text":
                return Text(element);
            case "arc":
                return Arc(element);
            case "fill":
                Box box = BoxOf(element);
                return [Shading.Fill(new Pen().Box(box.X, box.Y, box.Width, box.Height), InkOf(element, "ink", Ink.Black))];
            case "line":
                return
                [
                    Strokes.Line(
                        reading.Signed(element, "x1", 0),
                        reading.Signed(element, "y1", 0),
                        reading.Signed(element, "x2", 0),
                        reading.Signed(element, "y2", 0),
                        InkOf(element, "ink", Ink.Black),
                        reading.Number(element, "width", 0.3)
                    ),
                ];
            case "circle":
                return [Circle(element)];
            case "logo":
                return kit.Logo is { } logo ? logo.In(BoxOf(element)) : [];
            default:
                reading.Complain(
                    element,
                    $"'{element.Name.LocalName}' is no element of a design.",
                    $"Known: {string.Join(", ", DesignReader.Elements)}."
                );
                return [];
        }
    }

    private PlacedName SetName(XElement element)
    {
        string text = (string?)element.Attribute("text") ?? facts.Name;
        string cased = (string?)element.Attribute("case") switch
        {
            "lower" => text.ToLowerInvariant(),
            "upper" => text.ToUpperInvariant(),
            _ => text,
        };
        Box room = BoxOf(element);
        var order = new NameOrder(
            cased,
            room,
            reading.Number(element, "largest", room.Height),
            (int)reading.Number(element, "lines", 3),
            reading.Number(element, "leading", 1),
            AlignOf(element),
            InkOf(element, "ink", Ink.Black)
        )
        {
            StandsAtFoot = (string?)element.Attribute("anchor") != "top",
        };
        return NameSetter.Set(order, kit.NameFace ?? Face.Of(WeightOf(element)));
    }

    private IEnumerable<SceneItem> Ornament(XElement element)
    {
        string kind = (string?)element.Attribute("kind") ?? "";
        if (OrnamentList.Find(kind) is not { } ornament)
        {
            reading.Complain(element, $"There is no ornament '{kind}'.", $"Known: {string.Join(", ", DesignReader.OrnamentKinds)}.");
            return [];
        }

        Box room = BoxOf(element);
        PlacedName? name = names.GetValueOrDefault((string?)element.Attribute("of") ?? "name");
        if (name is not null && (string?)element.Attribute("to") == "name")
        {
            room = room with { Height = Math.Max(1, name.Box.Y - reading.Number(element, "gap", 4) - room.Y) };
        }
        else if (name is not null && (string?)element.Attribute("from") == "name")
        {
            double top = name.Box.Bottom + reading.Number(element, "gap", 4);
            room = room with { Y = top, Height = Math.Max(1, room.Bottom - top) };
        }

        bool isPlain = (string?)element.Attribute("plain") == "yes";
        return ornament.Draw(new OrnamentRequest(room, facts, inks, name) { BeyondMm = beyondMm, IsPlain = isPlain });
    }

    private IEnumerable<SceneItem> Text(XElement element)
    {
        string text = MarkupReading.OneLine(element.Value);
        if (text.Length == 0)
        {
            return [];
        }

        Box room = BoxOf(element);
        Face face = Face.Of(WeightOf(element));
        double wanted = reading.Number(element, "size", 2.25);
        FittingText line =
            (string?)element.Attribute("whole") == "yes"
                ? FittingText.Whole(text, face, wanted, room.Width)
                : FittingText.Of(text, face, wanted, room.Width);
        TextItem item = Strokes.Text(line.Text, face, room.X, room.Y, line.SizeMm, InkOf(element, "ink", Ink.Black));
        return AlignOf(element) switch
        {
            Align.Centre => [item with { XMm = room.CentreX - (item.WidthMm / 2) }],
            Align.Right => [item with { XMm = room.Right - item.WidthMm }],
            _ => [item],
        };
    }

    private IEnumerable<SceneItem> Arc(XElement element)
    {
        string text = MarkupReading.OneLine(element.Value);
        Face face = (string?)element.Attribute("face") == "name" && kit.NameFace is { } own ? own : Face.Of(WeightOf(element));
        var arc = new TextArc(
            (reading.Number(element, "cx", size.Width / 2), reading.Number(element, "cy", size.Height / 2)),
            reading.Number(element, "r", 20),
            reading.Number(element, "span", 150),
            (string?)element.Attribute("at") == "bottom"
        );
        return ArcText.Set(text, face, arc, reading.Number(element, "size", 2.5), InkOf(element, "ink", Ink.Black));
    }

    private PathItem Circle(XElement element)
    {
        Pen circle = new Pen().Circle(
            reading.Number(element, "cx", size.Width / 2),
            reading.Number(element, "cy", size.Height / 2),
            reading.Number(element, "r", 10)
        );
        return element.Attribute("stroke") is null
            ? Shading.Fill(circle, InkOf(element, "ink", Ink.Black))
            : Shading.Stroke(circle, InkOf(element, "stroke", Ink.Black), reading.Number(element, "width", 0.3));
    }

    private Box BoxOf(XElement element) =>
        new(
            reading.Signed(element, "x", 0),
            reading.Signed(element, "y", 0),
            Math.Max(LeastRoomMm, reading.Signed(element, "w", size.Width)),
            Math.Max(LeastRoomMm, reading.Signed(element, "h", size.Height))
        );

    private static Align AlignOf(XElement element) =>
        (string?)element.Attribute("align") switch
        {
            "centre" => Align.Centre,
            "right" => Align.Right,
            _ => Align.Left,
        };

    private Weight WeightOf(XElement element)
    {
        string? word = (string?)element.Attribute("weight");
        if (word is null)
        {
            return Weight.Regular;
        }

        if (Enum.TryParse(word, ignoreCase: true, out Weight weight) && Enum.IsDefined(weight))
        {
            return weight;
        }

        reading.Complain(
            element,
            $"There is no weight '{word}'.",
            $"Known: {string.Join(", ", Enum.GetNames<Weight>()).ToLowerInvariant()}."
        );
        return Weight.Regular;
    }

    // "deep:#14394A" is the brand's deep ink, or the design's own where the brand has none.
    private Ink InkOf(XElement element, string attribute, Ink otherwise)
    {
        string? word = (string?)element.Attribute(attribute);
        if (word is null)
        {
            return otherwise;
        }

        string[] parts = word.Split(':');
        try
        {
            Ink own = parts.Length > 1 ? Ink.Of(parts[1]) : Ink.Black;
            return parts[0] switch
            {
                "paper" => inks.Paper,
                "deep" => inks.Deep(own),
                "light" => inks.Light(own),
                "accent" => inks.Accent(own),
                "part" when facts.Parts.Count > 0 => inks.IsOneInk
                    ? inks.Deep(own)
                    : facts.Parts[Math.Min(facts.Parts.Count, int.Parse(parts[1], CultureInfo.InvariantCulture)) - 1].Ink,
                "white" => Ink.White,
                "black" => Ink.Black,
                _ => Ink.Of(word),
            };
        }
        catch (FormatException)
        {
            reading.Complain(
                element,
                $"'{word}' is no ink.",
                "Write paper, black, white, a colour such as #14394A, or deep, light or accent with the design's own: deep:#14394A."
            );
            return otherwise;
        }
    }
}
