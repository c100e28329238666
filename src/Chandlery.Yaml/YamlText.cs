using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Chandlery.Yaml;

/// <summary>
/// Turns YAML text into a tree with places. Declarations need none of YAML's sharper tools, so anchors, aliases, tags
/// and several documents in one file are refused: what a reviewer reads is what counts.
/// </summary>
public static class YamlText
{
    private const int LongestText = 2_000_000;
    private const int DeepestNesting = 24;

    /// <summary>The map at the top of one of several files, or null when there are problems; one that is there as a tree is not parsed again.</summary>
    /// <param name="texts">The texts.</param>
    /// <param name="path">The path of one of them.</param>
    /// <param name="file">The file's name, for places.</param>
    /// <param name="problems">Receives what is wrong.</param>
    /// <exception cref="KeyNotFoundException">There is no such text.</exception>
    public static YamlMap? Read(IReadOnlyDictionary<string, string> texts, string path, string file, Problems problems) =>
        (texts as IParsedDictionary)?.Tree(path, file) ?? Read(texts[path], file, problems);

    /// <summary>The map at the top of the file, or null when there are problems.</summary>
    public static YamlMap? Read(string text, string file, Problems problems)
    {
        var wholeFile = new TextPlace(file, 0, 0);
        if (text.Length > LongestText)
        {
            problems.Add(
                wholeFile,
                $"The file is longer than {LongestText:N0} characters.",
                "A declaration is a page or two: is this the right file?"
            );
            return null;
        }

        if (text.AsSpan().IndexOfAnyExceptInRange('\u0009', '\uffff') is var control and >= 0)
        {
            problems.Add(PlaceOf(text, control, file), "The file holds a control character.", "Save it as plain UTF-8 text.");
            return null;
        }

        var parser = new Parser(new Scanner(new StringReader(text), skipComments: true));
        try
        {
            parser.Consume<StreamStart>();
            if (!parser.Accept<DocumentStart>(out _))
            {
                problems.Add(wholeFile, "The file is empty.", "Start with 'declares: oil' or another kind.");
                return null;
            }

            parser.Consume<DocumentStart>();
            YamlValue root = ReadValue(parser, file, 0);
            parser.Consume<DocumentEnd>();
            if (!parser.Accept<StreamEnd>(out _))
            {
                throw new Refusal(
                    Place(parser.Current!.Start, file),
                    "The file holds more than one YAML document.",
                    "Keep one declaration per file."
                );
            }

            if (root is YamlMap map)
            {
                return map;
            }

            problems.Add(root.Place, "The file is not a list of fields.", "Write 'field: value' lines.");
        }
        catch (Refusal refusal)
        {
            problems.Add(refusal.Place, refusal.Message, refusal.Remedy);
        }
        catch (YamlException error)
        {
            problems.Add(Place(error.Start, file), "This is not valid YAML: " + Plain(error.Message), Hint(text, error.Start));
        }
        catch (Exception error) when (IsOfBrokenText(error))
        {
            Mark at = parser.Current?.End ?? Mark.Empty;
            problems.Add(Place(at, file), "This is not valid YAML.", Hint(text, at));
        }

        return null;
    }

    /// <summary>What the library throws, besides its own exception, on text that is broken in certain ways.</summary>
    internal static bool IsOfBrokenText(Exception error) =>
        error is InvalidOperationException or ArgumentException or FormatException or OverflowException or IndexOutOfRangeException;

    private static YamlValue ReadValue(Parser parser, string file, int depth)
    {
        ParsingEvent current = parser.Current!;
        TextPlace place = Place(current.Start, file);
        if (depth > DeepestNesting)
        {
            throw new Refusal(place, $"Fields are nested more than {DeepestNesting} deep.", "No declaration needs that.");
        }

        if (current is NodeEvent { Anchor.IsEmpty: false } or AnchorAlias)
        {
            throw new Refusal(
                place,
                "YAML anchors and aliases (& and *) are not used here.",
                "Write the value out, or quote a text that starts with '&' or '*'."
            );
        }

        if (current is NodeEvent { Tag.IsEmpty: false })
        {
            throw new Refusal(place, "YAML tags (!) are not used here.", "Quote a text that starts with '!'.");
        }

        switch (current)
        {
            case Scalar scalar:
                parser.MoveNext();
                return new YamlScalar(scalar.Value, scalar.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted, place);
            case SequenceStart:
                parser.MoveNext();
                var items = new List<YamlValue>();
                while (parser.Current is not SequenceEnd)
                {
                    items.Add(ReadValue(parser, file, depth + 1));
                }

                parser.MoveNext();
                return new YamlList(items, place);
            case MappingStart:
                parser.MoveNext();
                return ReadMap(parser, file, depth, place);
            default:
                throw new Refusal(place, "Something is written here that is no value.", "");
        }
    }

    private static YamlMap ReadMap(Parser parser, string file, int depth, TextPlace place)
    {
        var entries = new List<YamlEntry>();
        var seen = new HashSet<string>();
        while (parser.Current is not MappingEnd)
        {
            if (parser.Current is not Scalar key)
            {
                throw new Refusal(Place(parser.Current!.Start, file), "A field's name must be plain text.", "");
            }

            TextPlace keyPlace = Place(key.Start, file);
            if (!seen.Add(key.Value))
            {
                throw new Refusal(keyPlace, $"The field '{key.Value}' stands here twice.", "Keep one of them.");
            }

            if (!key.Anchor.IsEmpty || !key.Tag.IsEmpty)
            {
                throw new Refusal(keyPlace, "A field's name can't carry an anchor or a tag.", "");
            }

            parser.MoveNext();
            entries.Add(new YamlEntry(key.Value, keyPlace, ReadValue(parser, file, depth + 1)));
        }

        parser.MoveNext();
        return new YamlMap(entries, place);
    }

    private static TextPlace Place(Mark mark, string file) => new(file, (int)mark.Line, (int)mark.Column);

    private static TextPlace PlaceOf(string text, int index, string file)
    {
        int line = text.AsSpan(0, index).Count('\n') + 1;
        int column = index - text.LastIndexOf('\n', index);
        return new TextPlace(file, line, column);
    }

    // The library starts its messages with the place in brackets, which we print ourselves.
    private static string Plain(string message)
    {
        int end = message.IndexOf("): ", StringComparison.Ordinal);
        string plain = message.StartsWith('(') && end > 0 ? message[(end + 3)..] : message;
        return plain.EndsWith('.') ? plain : plain + ".";
    }

    private static string Hint(string text, Mark mark)
    {
        string[] lines = text.Split('\n');
        int at = (int)Math.Clamp(mark.Line, 1, lines.Length) - 1;
        string line = lines[at];

        // The library may stop at the end of the line before.
        string near = line + (at + 1 < lines.Length ? lines[at + 1] : "");
        return near.Contains('\t', StringComparison.Ordinal) ? "The line holds a tab: indent with spaces."
            : line.Count(c => c == ':') > 1 ? "Put a text that holds ': ' in quotes."
            : "Check indentation, quotes and brackets around here.";
    }

    private sealed class Refusal(TextPlace place, string message, string remedy) : Exception(message)
    {
        public TextPlace Place { get; } = place;

        public string Remedy { get; } = remedy;
    }
}
