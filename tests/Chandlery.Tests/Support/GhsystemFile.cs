using System.Collections.Concurrent;
using System.Text;
using System.Text.RegularExpressions;

namespace Chandlery.Tests.Support;

/// <summary>
/// Statements of the LaTeX package ghsystem (Debian package texlive-science), which <c>tests/run.sh</c> unpacks beside the
/// tests. It is an independent transcription of CLP's statements as they stood in 2015 or before.
/// </summary>
internal static partial class GhsystemFile
{
    private static readonly ConcurrentDictionary<string, Dictionary<string, string>> Files = new();

    public static Dictionary<string, string> Read(string language) => Files.GetOrAdd(language, Parse);

    private static Dictionary<string, string> Parse(string language)
    {
        string folder = Path.Combine(TestLaw.Repository, "tests", ".cache", "ghsystem");
        string file = Path.Combine(folder, $"ghsystem_{language}.def");
        Assert.True(File.Exists(file), $"{file} is missing: run tests/run.sh, which fetches it.");
        string tex = File.ReadAllText(file);
        var statements = new Dictionary<string, string>();
        foreach (Match match in Statement().Matches(tex))
        {
            string code =
                match.Groups["kind"].Value
                + match
                    .Groups["code"]
                    .Value.Replace(" ", "", StringComparison.Ordinal)
                    .Replace("+", "+" + match.Groups["kind"].Value, StringComparison.Ordinal);
            statements[code] = Plain(Balanced(tex, match.Index + match.Length));
        }

        return statements;
    }

    /// <summary>
    /// Text without spaces (the package has lost some at its line ends), without the blanks that the law leaves to the supplier and
    /// without marks that completion differs in.
    /// </summary>
    public static string Normalise(string text) =>
        new([
            .. Blank()
                .Replace(text, "")
                .Replace('\u2019', '\'')
                .Where(c => !char.IsWhiteSpace(c) && c is not ('\u2026' or '.' or '\u00ab' or '\u00bb')),
        ]);

    private static string Balanced(string tex, int start)
    {
        int depth = 1;
        int at = start;
        for (; depth > 0; at++)
        {
            depth +=
                tex[at] == '{' ? 1
                : tex[at] == '}' ? -1
                : 0;
        }

        return tex[start..(at - 1)];
    }

    private static string Plain(string tex)
    {
        // The switch for stated organs prints its words when no organ is stated.
        tex = Organs().Replace(tex, m => m.Groups[1].Value);
        var text = new StringBuilder();
        for (int i = 0; i < tex.Length; i++)
        {
            char c = tex[i];
            if (c == '~')
            {
                text.Append(' ');
            }
            else if (c is ' ' or '\n' or '{' or '}')
            {
                continue;
            }
            else if (c != '\\')
            {
                text.Append(c);
            }
            else if (i + 1 < tex.Length && !char.IsLetter(tex[i + 1]))
            {
                i = Accent(tex, i + 1, text);
            }
            else
            {
                Match macro = Macro().Match(tex, i);
                i += macro.Length - 1;
                text.Append(MacroText(macro.Value));
                if (macro.Value is "\\c" or "\\~" && i + 1 < tex.Length)
                {
                    i = Accent(tex, i, text);
                }
            }
        }

        return Normalise(text.ToString());
    }

    private static string MacroText(string macro) =>
        macro switch
        {
            "\\ss" => "ß",
            "\\oe" => "œ",
            "\\OE" => "Œ",
            "\\ae" => "æ",
            "\\i" => "i",
            "\\ghsystem_slash:" => "/",
            "\\ghsystem_dash:" => "-",
            _ => "",
        };

    // An accent stands before its letter; Unicode puts the combining mark behind it.
    private static int Accent(string tex, int at, StringBuilder text)
    {
        string? mark = tex[at] switch
        {
            '"' => "\u0308",
            '\'' => "\u0301",
            '`' => "\u0300",
            '^' => "\u0302",
            '~' => "\u0303",
            'c' => "\u0327",
            _ => null,
        };
        if (mark is null)
        {
            text.Append(tex[at] == '-' ? "" : tex[at].ToString());
            return at;
        }

        // "\\~" before a blank is a slip of the package for a plain tie.
        if (at + 1 >= tex.Length || !(char.IsLetter(tex[at + 1]) || tex[at + 1] is '{' or '\\' or ' '))
        {
            text.Append(' ');
            return at;
        }

        int letter = at + 1;
        while (letter < tex.Length && tex[letter] is ' ' or '{')
        {
            letter++;
        }

        if (tex[letter] == '\\' && tex[letter + 1] == 'i')
        {
            text.Append(Compose('i', mark));
            return letter + 1;
        }

        text.Append(Compose(tex[letter], mark));
        return letter;
    }

    // Globalization is invariant here, so nothing else composes letters and marks.
    private static char Compose(char letter, string mark)
    {
        const string plain = "aeiouAEIOUcCnN";
        string composed = mark switch
        {
            "\u0308" => "äëïöüÄËÏÖÜ    ",
            "\u0301" => "áéíóúÁÉÍÓÚ    ",
            "\u0300" => "àèìòùÀÈÌÒÙ    ",
            "\u0302" => "âêîôûÂÊÎÔÛ    ",
            "\u0303" => "            ñÑ",
            _ => "          çÇ  ",
        };
        int at = plain.IndexOf(letter, StringComparison.Ordinal);
        Assert.True(at >= 0 && composed[at] != ' ', $"no letter for {letter} with {(int)mark[0]:x}");
        return composed[at];
    }

    [GeneratedRegex(@"\\ghsystem_add_statement:nnn\s*\{\s*(?<kind>H|P|EUH)\s*\}\s*\{\s*(?<code>[0-9A-Za-z+ ]+?)\s*\}\s*\{")]
    private static partial Regex Statement();

    [GeneratedRegex("<[^<>]*>")]
    private static partial Regex Blank();

    [GeneratedRegex(@"\\[A-Za-z_:]+")]
    private static partial Regex Macro();

    [GeneratedRegex(@"\\bool_if:NF\s*\\l_ghsystem_organs_bool\s*\{([^}]*)\}")]
    private static partial Regex Organs();
}
