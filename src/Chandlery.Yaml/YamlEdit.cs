using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Chandlery.Yaml;

/// <summary>
/// Changes single values of a YAML text and leaves every other character alone: comments, order, quotes and spacing of
/// what was not touched stay as the maker wrote them.
/// </summary>
/// <remarks>A path is a list of field names and list positions, such as <c>["oils", 0, "share"]</c>.</remarks>
public static partial class YamlEdit
{
    /// <summary>Sets a value; adds the last field of the path when its map lacks it.</summary>
    /// <exception cref="FormatException">The text is no YAML, or the path leads nowhere.</exception>
    public static string Set(string text, IReadOnlyList<object> path, string value)
    {
        Node root = Parse(text);
        string written = Scalar(value);
        if (Find(root, path) is { } node)
        {
            return node.Kind == NodeKind.Scalar ? Replace(text, node.Start, node.End, written) : throw Nowhere(path);
        }

        Node map = Find(root, [.. path.SkipLast(1)]) is { Kind: NodeKind.Map } parent ? parent : throw Nowhere(path);
        string field = $"{path[^1]}: {written}";
        return map.IsFlow ? IntoFlow(text, map, field) : AfterLast(text, map, field);
    }

    /// <summary>
    /// Puts a value where the path leads, whatever was there before: a text, or a list or group on one line. Groups and lists that the
    /// path needs and the file lacks are made.
    /// </summary>
    /// <param name="text">The YAML.</param>
    /// <param name="path">Where; a list position may be the one after the last.</param>
    /// <param name="written">The value as YAML writes it on one line: see <see cref="Scalar"/>.</param>
    /// <exception cref="FormatException">The text is no YAML, or the path leads through a value that holds nothing.</exception>
    public static string Put(string text, IReadOnlyList<object> path, string written)
    {
        Node root = Parse(text);
        if (Find(root, path) is { } node)
        {
            return PutInPlace(text, root, path, node, written);
        }

        IReadOnlyList<object> above = [.. path.SkipLast(1)];
        if (Find(root, above) is not { Kind: not NodeKind.Scalar } parent || parent is { Entries.Count: 0, IsFlow: false })
        {
            string made = path[^1] is int ? $"[{written}]" : $"{{ {Scalar((string)path[^1])}: {written} }}";
            return above.Count > 0 ? Put(text, above, made) : throw Nowhere(path);
        }

        string item = path[^1] is string key ? $"{Scalar(key)}: {written}" : written;
        return (parent.Kind == NodeKind.List) != path[^1] is int ? throw Nowhere(path)
            : parent.IsFlow ? IntoFlow(text, parent, item)
            : AfterLast(text, parent, parent.Kind == NodeKind.List ? "- " + item : item);
    }

    // A block below its field's name goes, with the line's end before it, and the new value stands beside the name.
    private static string PutInPlace(string text, Node root, IReadOnlyList<object> path, Node node, string written)
    {
        if (node.Kind == NodeKind.Scalar || node.IsFlow)
        {
            string room = node.Start > 0 && node.Start == node.End && text[node.Start - 1] == ':' ? " " : "";
            return Replace(text, node.Start, node.End, room + written);
        }

        int from = path[^1] is string key
            ? text.IndexOf(':', Find(root, [.. path.SkipLast(1)])!.Entries.Find(e => e.Key == key)!.KeyEnd) + 1
            : node.Start;
        return Replace(text, from, node.End, (path[^1] is string ? " " : "") + written);
    }

    /// <summary>Puts a text in place of the one that starts at a line and column, both from 1.</summary>
    /// <exception cref="FormatException">The text is no YAML, or no value starts there.</exception>
    public static string SetAt(string text, int line, int column, string value) =>
        Scalars(Parse(text)).FirstOrDefault(n => PlaceOf(text, n.Start) == (line, column)) is { } node
            ? Replace(text, node.Start, node.End, Scalar(value))
            : throw new FormatException($"line {line}: no value starts at column {column}.");

    /// <summary>Gives a field another name.</summary>
    /// <exception cref="FormatException">There is no such field.</exception>
    public static string Rename(string text, IReadOnlyList<object> path, string name)
    {
        Node map = Find(Parse(text), [.. path.SkipLast(1)]) ?? throw Nowhere(path);
        Entry entry = map.Entries.Find(e => e.Key == (string)path[^1]) ?? throw Nowhere(path);
        return Replace(text, entry.KeyStart, entry.KeyEnd, name);
    }

    /// <summary>Adds an item, written as YAML on one line, to the end of a list.</summary>
    /// <exception cref="FormatException">There is no such list, or it is empty and not in brackets.</exception>
    public static string Add(string text, IReadOnlyList<object> path, string item)
    {
        Node list = Find(Parse(text), path) is { Kind: NodeKind.List } found ? found : throw Nowhere(path);
        return list.IsFlow ? IntoFlow(text, list, item) : AfterLast(text, list, "- " + item);
    }

    /// <summary>Takes a list's item or a map's field away, with the comments on its own lines.</summary>
    /// <exception cref="FormatException">There is no such thing.</exception>
    public static string Remove(string text, IReadOnlyList<object> path)
    {
        Node root = Parse(text);
        Node parent = Find(root, [.. path.SkipLast(1)]) ?? throw Nowhere(path);
        int at = path[^1] is int index ? index : parent.Entries.FindIndex(e => e.Key == (string)path[^1]);
        if (at < 0 || at >= parent.Entries.Count)
        {
            throw Nowhere(path);
        }

        Entry entry = parent.Entries[at];
        if (!parent.IsFlow && parent.Entries.Count == 1 && path.Count > 1)
        {
            // An empty block has no line to stand on.
            return Remove(text, [.. path.SkipLast(1)]);
        }

        if (parent.IsFlow)
        {
            (int from, int to) =
                at + 1 < parent.Entries.Count ? (entry.KeyStart, parent.Entries[at + 1].KeyStart)
                : at > 0 ? (parent.Entries[at - 1].Value.End, entry.Value.End)
                : (entry.KeyStart, entry.Value.End);
            return Replace(text, from, to, "");
        }

        int start = LineStart(text, entry.KeyStart);
        int end = LineEnd(text, entry.Value.End);
        return Replace(text, start, end, "");
    }

    private enum NodeKind
    {
        Scalar,
        List,
        Map,
    }

    /// <summary>An item or field; an item has no key and starts where its value does.</summary>
    private sealed record Entry(string? Key, int KeyStart, int KeyEnd, Node Value);

    private sealed record Node(NodeKind Kind, int Start, int End, bool IsFlow, List<Entry> Entries);

    private static Node Parse(string text)
    {
        try
        {
            var parser = new Parser(new Scanner(new StringReader(text), skipComments: true));
            parser.Consume<StreamStart>();
            parser.Consume<DocumentStart>();
            return Read(text, parser, 0);
        }
        catch (YamlException error)
        {
            throw new FormatException($"line {error.Start.Line}: {error.Message}", error);
        }
        catch (Exception error) when (error is not FormatException && YamlText.IsOfBrokenText(error))
        {
            throw new FormatException("This is not valid YAML.", error);
        }
    }

    private static Node Read(string text, Parser parser, int depth)
    {
        if (depth > 40)
        {
            throw new FormatException("The fields are nested too deep.");
        }

        ParsingEvent current = parser.Current!;
        parser.MoveNext();
        var entries = new List<Entry>();
        switch (current)
        {
            case Scalar scalar:
                return new Node(NodeKind.Scalar, (int)scalar.Start.Index, (int)scalar.End.Index, false, entries);
            case SequenceStart sequence:
                while (parser.Current is not SequenceEnd)
                {
                    Node item = Read(text, parser, depth + 1);
                    entries.Add(new Entry(null, item.Start, item.Start, item));
                }

                return Close(text, parser, NodeKind.List, sequence.Start, sequence.Style == SequenceStyle.Flow, entries);
            case MappingStart mapping:
                while (parser.Current is Scalar key)
                {
                    parser.MoveNext();
                    entries.Add(new Entry(key.Value, (int)key.Start.Index, (int)key.End.Index, Read(text, parser, depth + 1)));
                }

                return Close(text, parser, NodeKind.Map, mapping.Start, mapping.Style == MappingStyle.Flow, entries);
            default:
                throw new FormatException($"line {current.Start.Line}: something is written here that is no value.");
        }
    }

    // A block ends with its last value; what the library calls its end is the start of whatever follows. Of what stands in brackets it
    // gives the end now before the bracket, now after it: the bracket itself is looked for.
    private static Node Close(string text, Parser parser, NodeKind kind, Mark start, bool isFlow, List<Entry> entries)
    {
        parser.MoveNext();
        int last = entries.Count > 0 ? entries[^1].Value.End : (int)start.Index + (isFlow ? 1 : 0);
        return new Node(kind, (int)start.Index, isFlow ? AfterBracket(text, last) : last, isFlow, entries);
    }

    private static int AfterBracket(string text, int from)
    {
        int at = from;
        while (at < text.Length && text[at] is not (']' or '}'))
        {
            at = text[at] == '#' ? LineEnd(text, at) : at + 1;
        }

        return Math.Min(at + 1, text.Length);
    }

    private static Node? Find(Node node, IReadOnlyList<object> path)
    {
        foreach (object step in path)
        {
            Entry? entry = step is int index
                ? node.Kind == NodeKind.List
                    ? node.Entries.ElementAtOrDefault(index)
                    : null
                : node.Kind == NodeKind.Map
                    ? node.Entries.Find(e => e.Key == (string)step)
                    : null;
            if (entry is null)
            {
                return null;
            }

            node = entry.Value;
        }

        return node;
    }

    private static IEnumerable<Node> Scalars(Node node) =>
        node.Kind == NodeKind.Scalar ? [node] : node.Entries.SelectMany(e => Scalars(e.Value));

    private static (int Line, int Column) PlaceOf(string text, int at) =>
        (text.AsSpan(0, at).Count('\n') + 1, at - LineStart(text, at) + 1);

    private static string IntoFlow(string text, Node node, string written)
    {
        int close = node.End - 1;
        if (node.Entries.Count == 0)
        {
            return Replace(text, close, close, $" {written} ");
        }

        int after = node.Entries[^1].Value.End;
        return Replace(text, after, after, ", " + written);
    }

    // The new line stands below the last one, as far to the right as the first.
    private static string AfterLast(string text, Node node, string written)
    {
        if (node.Entries.Count == 0)
        {
            throw new FormatException("The list is empty: write '[]' first.");
        }

        int first = node.Entries[0].KeyStart;
        int lineStart = LineStart(text, first);
        string before = text[lineStart..first];
        string indent =
            node.Kind == NodeKind.List ? before[..before.LastIndexOf('-')] : new string([.. before.Select(c => c == '-' ? ' ' : c)]);
        int end = LineEnd(text, node.End);
        string lead = end > 0 && text[end - 1] != '\n' ? "\n" : "";
        return Replace(text, end, end, $"{lead}{indent}{written}\n");
    }

    private static int LineStart(string text, int at) => text.LastIndexOf('\n', Math.Max(0, at - 1)) + 1;

    private static int LineEnd(string text, int at)
    {
        int end = text.IndexOf('\n', at);
        return end < 0 ? text.Length : end + 1;
    }

    private static string Replace(string text, int from, int to, string with) => string.Concat(text.AsSpan(0, from), with, text.AsSpan(to));

    private static FormatException Nowhere(IReadOnlyList<object> path) =>
        new($"There is no '{string.Join('.', path.Select(p => Convert.ToString(p, CultureInfo.InvariantCulture)))}' in the file.");

    /// <summary>A text as YAML writes it: plain where that is safe, else in double quotes.</summary>
    public static string Scalar(string value) => Safe().IsMatch(value) && !Special().IsMatch(value) ? value : Quoted(value);

    /// <summary>A text in double quotes; whatever a hostile document holds stays inside them.</summary>
    public static string Quoted(string value)
    {
        // Halves of characters come out of the enumeration as replacement characters.
        var quoted = new StringBuilder("\"");
        foreach (Rune rune in value.EnumerateRunes())
        {
            quoted.Append(
                rune.Value switch
                {
                    '"' => "\\\"",
                    '\\' => "\\\\",
                    '\u2028' or '\u2029' or '\ufeff' => $"\\u{rune.Value:x4}",
                    _ when Rune.IsControl(rune) => $"\\u{rune.Value:x4}",
                    _ => rune.ToString(),
                }
            );
        }

        return quoted.Append('"').ToString();
    }

    [GeneratedRegex(@"^[\p{L}\p{Nd}](?:[\p{L}\p{Nd} ._%/()+&'-]*[\p{L}\p{Nd}._%)])?$")]
    private static partial Regex Safe();

    [GeneratedRegex(@"^(?:true|false|yes|no|on|off|null|~)$", RegexOptions.IgnoreCase)]
    private static partial Regex Special();
}
