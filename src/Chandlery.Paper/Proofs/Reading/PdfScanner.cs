using System.Globalization;
using System.Text;

namespace Chandlery.Paper.Proofs.Reading;

/// <summary>
/// Cuts PDF syntax into objects (ISO 32000-1, 7.2 and 7.3): numbers as <see cref="double"/>, strings as bytes, names, lists,
/// dictionaries by name, references, and words.
/// </summary>
/// <param name="data">The bytes.</param>
/// <param name="start">Where to begin.</param>
internal sealed class PdfScanner(byte[] data, int start = 0)
{
    private static readonly PdfWord ListEnd = new("]");
    private static readonly PdfWord DictionaryEnd = new(">>");

    private int at = start;

    /// <summary>Where the next object begins, or the blanks before it.</summary>
    public int At => at;

    /// <summary>The next object; null at the end.</summary>
    /// <exception cref="FormatException">It is no syntax of a PDF.</exception>
    public object? Next()
    {
        while (at < data.Length && IsBlank(data[at]))
        {
            at++;
        }

        if (at >= data.Length)
        {
            return null;
        }

        switch (data[at])
        {
            case (byte)'/':
                at++;
                return new PdfName(Regular());
            case (byte)'(':
                return Text();
            case (byte)'[':
                at++;
                return Until(ListEnd);
            case (byte)']':
                at++;
                return ListEnd;
            case (byte)'<' when Follows('<'):
                at += 2;
                return Paired(Until(DictionaryEnd));
            case (byte)'>' when Follows('>'):
                at += 2;
                return DictionaryEnd;
            case (byte)'<':
                return Hexadecimal();
            default:
                string word = Regular();
                return word.Length == 0 ? throw new FormatException($"byte {data[at]} begins no object")
                    : IsNumber(word, out double number) ? number
                    : new PdfWord(word);
        }
    }

    /// <summary>The next object, which must be of a kind.</summary>
    /// <exception cref="FormatException">It is another.</exception>
    public T Next<T>() => Next() is T wanted ? wanted : throw new FormatException($"no {typeof(T).Name} where one must stand");

    private static bool IsNumber(string word, out double number) =>
        double.TryParse(word, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);

    private static bool IsBlank(byte one) => one is 0 or 9 or 10 or 12 or 13 or 32;

    private static bool IsDelimiter(byte one) => "()<>[]{}/%"u8.Contains(one);

    private bool Follows(char next) => at + 1 < data.Length && data[at + 1] == next;

    private string Regular()
    {
        int from = at;
        while (at < data.Length && !IsBlank(data[at]) && !IsDelimiter(data[at]))
        {
            at++;
        }

        return Encoding.Latin1.GetString(data, from, at - from);
    }

    // Two numbers and an R are one reference.
    private List<object> Until(PdfWord end)
    {
        var objects = new List<object>();
        for (object? next = Next(); next != (object)end; next = Next())
        {
            switch (next)
            {
                case null:
                    throw new FormatException($"no '{end.Text}' at the end of a list or dictionary");
                case PdfWord { Text: "R" } when objects is [.., double number, double _]:
                    objects.RemoveRange(objects.Count - 2, 2);
                    objects.Add(new PdfReference((int)number));
                    break;
                default:
                    objects.Add(next);
                    break;
            }
        }

        return objects;
    }

    private static Dictionary<string, object> Paired(List<object> objects)
    {
        var pairs = new Dictionary<string, object>();
        for (int i = 0; i + 1 < objects.Count; i += 2)
        {
            pairs[(objects[i] as PdfName ?? throw new FormatException("a dictionary's key is no name")).Text] = objects[i + 1];
        }

        return pairs;
    }

    // A string in brackets (7.3.4.2).
    private byte[] Text()
    {
        var text = new List<byte>();
        int depth = 0;
        do
        {
            byte one = Taken();
            if (one == '\\')
            {
                byte escaped = Taken();
                text.Add(
                    escaped switch
                    {
                        (byte)'n' => (byte)'\n',
                        (byte)'r' => (byte)'\r',
                        (byte)'(' or (byte)')' or (byte)'\\' => escaped,
                        _ => throw new FormatException("an escape that is not read here"),
                    }
                );
                continue;
            }

            depth +=
                one == '(' ? 1
                : one == ')' ? -1
                : 0;
            text.Add(one);
        } while (depth > 0);

        // Without the outer brackets.
        return [.. text[1..^1]];
    }

    private byte[] Hexadecimal()
    {
        at++;
        int from = at;
        while (Taken() != '>')
        {
            // Only the end is looked for.
        }

        return Convert.FromHexString(Encoding.Latin1.GetString(data, from, at - 1 - from));
    }

    private byte Taken() => at < data.Length ? data[at++] : throw new FormatException("a string has no end");
}
