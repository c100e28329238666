using System.Text;

namespace Chandlery.Hostile;

/// <summary>Bends texts and bytes the way accidents and attackers do.</summary>
public sealed class Mangler(int seed)
{
    private static readonly string[] Poison =
    [
        "NaN",
        ".inf",
        "-1",
        "1e308",
        "1e-320",
        "99999999999999999999",
        "\u0663",
        "\u07c0",
        "1,5",
        "1.234.567",
        "\t",
        "\u0000",
        "\ufeff",
        "\u2028",
        "\ud800",
        "&a [*a, *a]",
        "*a",
        "!!python/object:os.system",
        "<<: {}",
        "---\n",
        "...\n",
        "? [x] : y",
        "|\n  text",
        "'",
        "\"",
        "{",
        "}",
        "[",
        "]",
        ": ",
        "- ",
        "#",
        "%",
        "C >= ",
        "Skin Sens. 1A, H317",
        "<= ",
        " - <",
        "{{ for i in 1..100000000 }}x{{ end }}",
        "{{ include 'label.sbn' }}",
        "{{ while true }}{{ end }}",
        "{{ func f; f; end; f }}",
        "{{ 1 / 0 }}",
        "</paper>",
        "<!DOCTYPE a [<!ENTITY b 'c'>]>",
        "../../../etc/passwd",
        "=cmd|' /C calc'!A0",
    ];

    private readonly Random random = new(seed);

    public int Next(int below) => random.Next(below);

    public T Pick<T>(IReadOnlyList<T> items) => items[random.Next(items.Count)];

    /// <summary>The text with one to six accidents.</summary>
    public string Text(string text)
    {
        var bent = new StringBuilder(text);
        for (int n = random.Next(1, 7); n > 0; n--)
        {
            int at = random.Next(bent.Length + 1);
            int length = Math.Min(random.Next(1, 30), bent.Length - at);
            switch (random.Next(7))
            {
                case 0:
                    bent.Insert(at, Pick(Poison));
                    break;
                case 1:
                    bent.Remove(at, length);
                    break;
                case 2:
                    bent.Insert(at, bent.ToString(at, length));
                    break;
                case 3 when at < bent.Length:
                    bent[at] = (char)random.Next(1, 0x3000);
                    break;
                case 4:
                    bent.Insert(at, new string(Pick(Poison)[0], random.Next(1, 400)));
                    break;
                case 5:
                    Swap(bent);
                    break;
                default:
                    bent.Insert(at, random.Next(-1000, 100_000));
                    break;
            }
        }

        return bent.ToString();
    }

    /// <summary>The bytes with some of them changed, or cut short.</summary>
    public byte[] Bytes(byte[] bytes)
    {
        byte[] bent = [.. bytes];
        for (int n = random.Next(1, 60); n > 0; n--)
        {
            bent[random.Next(bent.Length)] = (byte)random.Next(256);
        }

        return random.Next(3) == 0 ? bent[..random.Next(bent.Length)] : bent;
    }

    private void Swap(StringBuilder text)
    {
        string[] lines = text.ToString().Split('\n');
        int a = random.Next(lines.Length);
        int b = random.Next(lines.Length);
        (lines[a], lines[b]) = (lines[b], lines[a]);
        text.Clear().AppendJoin('\n', lines);
    }
}
