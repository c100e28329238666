using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Intake.Wording;

/// <summary>Reads classes, statements, M-factors, specific limits and acute toxicity estimates from running text.</summary>
internal sealed partial class HazardText
{
    /// <summary>How a doubt about words that were not understood begins.</summary>
    public const string NotUnderstood = "not understood";

    /// <summary>What a doubt about an estimate that is only a bound says.</summary>
    public const string IsBound = "is a bound, not an estimate";

    private const int LongestCell = 3000;
    private const int LongestLead = 80;
    private readonly HazardVocabulary vocabulary;
    private readonly SheetWording wording;
    private readonly Regex classPattern;
    private readonly Regex mPattern;
    private readonly Regex estimateName;
    private readonly Regex routeBefore;
    private readonly Dictionary<string, string> codeByLongName;

    public HazardText(HazardVocabulary vocabulary, SheetWording wording)
    {
        this.vocabulary = vocabulary;
        this.wording = wording;
        codeByLongName = wording.ClassNames.ToDictionary(p => Phrase.Plain(p.Key), p => p.Value);
        string categoryWords = Alternatives(wording.Lists["categoryWords"]);
        IEnumerable<string> codes = vocabulary
            .Categories.Select(c => c.ClassCode)
            .Distinct()
            .Select(c => Regex.Escape(c).Replace(@"\.", @"\.?", StringComparison.Ordinal).Replace(@"\ ", @"\s*", StringComparison.Ordinal));
        string names = string.Join(
            '|',
            codes
                .Concat(wording.ClassNames.Keys.Select(k => Regex.Escape(k).Replace(@"\ ", @"\s+", StringComparison.Ordinal)))
                .OrderByDescending(n => n.Length)
        );
        var options = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant;
        classPattern = new Regex(
            $@"(?<![\p{{L}}])(?<name>{names})(?![\p{{L}}])\s*[,(:;\u2013-]?\s*(?:\(?(?:{categoryWords})\.?\s*)?(?<cat>[1-5][A-Fa-f]?(?![\w]))?\)?(?:\s*\((?<route>[\p{{L}}]+)\))?\s*\*{{0,3}}",
            options
        );
        string when = Alternatives(wording.Lists["acute"].Concat(wording.Lists["chronic"]));
        string factor = Alternatives(wording.Labels["m"].Append("m"));
        routeBefore = new Regex($@"(?<![\p{{L}}])(?:{Alternatives(wording.Routes.Values.SelectMany(r => r))})[\s:;,(]{{0,3}}$", options);
        estimateName = new Regex(
            $@"(?<![\p{{L}}])(?:{Alternatives(wording.Labels["ate"])}|LD\s?50|DL\s?50|LC\s?50|CL\s?50)(?![\p{{L}}0-9])|inhal",
            options
        );
        mPattern = new Regex(
            $@"(?:(?<when>{when})\s*)?(?<![\p{{L}}])(?:{factor}|M\s*-\s*fa[ck]tor(?:s|en)?)(?![\p{{L}}])\s*(?:[,(\[]?\s*(?<when>{when})(?:\s*1)?\s*[)\]]?)?\s*[:=]\s*(?<m>[0-9]{{1,6}})(?![0-9.,])",
            options
        );
    }

    /// <summary>Reads a cell's text.</summary>
    /// <param name="text">The text, wrapped lines joined.</param>
    /// <param name="bareM">True in a column of M-factors, where a bare figure is one.</param>
    public HazardReading Read(string text, bool bareM = false)
    {
        var doubts = new List<string>();
        if (text.Length > LongestCell)
        {
            doubts.Add($"the cell is longer than {LongestCell} characters; only its start was read");
        }

        text = Tidy(text);
        char[] rest = [.. text];
        List<ToxicityEstimate> toxicity = [.. Toxicity(text, rest, doubts)];
        MFactors? m = ReadM(new string(rest), rest, bareM, doubts);
        var tokens = Tokens(new string(rest), rest);
        List<string> limits = [.. Limits(new string(rest), rest, tokens, doubts)];
        IReadOnlyList<string>? classes = Classes(tokens, new string(rest), rest, doubts);
        string left = Leftover(new string(rest));
        if (left.Length > 0)
        {
            doubts.Add($"{NotUnderstood}: '{left}'");
        }

        return new HazardReading(classes, limits, m, toxicity, doubts);
    }

    /// <summary>Acute toxicity estimates in a line of text, for section 11; bounds ("over 5000") are none.</summary>
    /// <param name="text">The line.</param>
    /// <param name="doubts">Takes why a figure with a unit was left out.</param>
    /// <param name="decimals">The document's decimal mark, by which a thousands mark is known; null when it is not certain.</param>
    public IReadOnlyList<ToxicityEstimate> ReadToxicity(string text, List<string> doubts, char? decimals)
    {
        string tidy = Tidy(decimals is { } mark ? DecimalMark.WithoutThousands(text, mark) : text);
        return [.. Toxicity(tidy, [.. tidy], doubts)];
    }

    /// <summary>
    /// What a text says beside classes: M-factors, specific limits, estimates. Null when it says anything else or nothing of these, so
    /// that it may be part of a name.
    /// </summary>
    public HazardReading? ReadExtras(string text)
    {
        HazardReading read = Read(text);
        bool says = read.M is not null || read.Limits.Count > 0 || read.Toxicity.Count > 0;
        return says && read.Classes is not { Count: > 0 } && !read.Doubts.Any(d => d.StartsWith(NotUnderstood, StringComparison.Ordinal))
            ? read
            : null;
    }

    /// <summary>True when a text names an estimate: "LD50", "ATE".</summary>
    public bool NamesEstimate(string text) => estimateName.IsMatch(text);

    /// <summary>True when a text gives a class, a factor, a limit or an estimate.</summary>
    public bool Says(string text)
    {
        HazardReading read = Read(text);
        return read.Classes is { Count: > 0 } || read.M is not null || read.Limits.Count > 0 || read.Toxicity.Count > 0;
    }

    /// <summary>M-factors in a line of text; null when there are none.</summary>
    public MFactors? ReadM(string text)
    {
        string tidy = Tidy(text);
        return ReadM(tidy, [.. tidy], false, []);
    }

    /// <summary>Where the last class, statement, factor, limit or estimate of a text ends; 0 when it says none.</summary>
    public int EndOfLast(string text) => Spans(text).Select(s => s.End).DefaultIfEmpty(0).Max();

    /// <summary>Where the first of them begins; the text's length when it says none.</summary>
    public int StartOfFirst(string text) => Spans(text).Select(s => s.Start).DefaultIfEmpty(text.Length).Min();

    private IEnumerable<(int Start, int End)> Spans(string text)
    {
        string cut = text.Length > LongestCell ? text[..LongestCell] : text;
        IEnumerable<(int, int)> tokens = Tokens(cut, cut.ToCharArray()).Select(t => (t.Start, t.End));
        IEnumerable<(int, int)> others = new[] { mPattern, LimitPattern(), Estimate() }
            .SelectMany(p => p.Matches(cut))
            .Select(m => (m.Index, m.Index + m.Length));
        string small = cut.ToLowerInvariant();
        IEnumerable<(int, int)> none = wording
            .Lists["notClassified"]
            .Select(p => (At: Phrase.IndexOf(p, small), p.Length))
            .Where(p => p.At >= 0)
            .Select(p => (p.At, p.At + p.Length));
        return tokens.Concat(others).Concat(none);
    }

    // Runs of blanks and of one sign say nothing, and would make the patterns slow on hostile text.
    private static string Tidy(string text)
    {
        string blanks = RepeatedBlanks().Replace(text.Length > LongestCell ? text[..LongestCell] : text, " ");
        return BrokenCode().Replace(RepeatedSigns().Replace(blanks, "$1$1"), "");
    }

    // Every figure with a unit, and the words before it up to the figure before.
    private IEnumerable<ToxicityEstimate> Toxicity(string text, char[] rest, List<string> doubts)
    {
        int after = 0;
        foreach (Match match in Estimate().Matches(text))
        {
            int from = Math.Max(after, match.Index - LongestLead);
            string lead = text[from..match.Index];
            after = match.Index + match.Length;
            int start = StartOfLead(lead);
            if (start < 0)
            {
                continue;
            }

            string around = Phrase.Plain(lead[start..]);
            Blank(rest, from + start, after - from - start);
            string figure = match.Groups["value"].Value.TrimEnd('.', ',');
            string unit = match.Groups["unit"].Value.Replace(" ", "", StringComparison.Ordinal).ToLowerInvariant();
            string printed = text[(from + start)..after].Trim();
            ExposureRoute? route = RouteOf(around, unit);
            if (match.Groups["sign"].Success)
            {
                doubts.Add($"'{printed}' {IsBound}; it was left out");
            }
            else if (Thousands().IsMatch(figure) || figure.Contains(' ', StringComparison.Ordinal))
            {
                doubts.Add($"'{figure}' could be a decimal or a thousand; the estimate was left out");
            }
            else if (route is null)
            {
                doubts.Add($"'{printed}': the route and the unit do not go together; it was left out");
            }
            else if (
                double.TryParse(figure.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value)
                && value > 0
            )
            {
                yield return new ToxicityEstimate(route.Value, value);
            }
            else
            {
                doubts.Add($"'{printed}' holds no figure that can be read; it was left out");
            }
        }
    }

    // Where the words of an estimate begin: its name with a route right before it, else its route; -1 when there is neither. The
    // last ones count: what stands before them belongs to a class ("Skin Irrit. 2") or to the estimate before.
    private int StartOfLead(string lead)
    {
        Match? name = estimateName.Matches(lead).LastOrDefault();
        if (name is not null)
        {
            return routeBefore.Match(lead[..name.Index]) is { Success: true } before ? before.Index : name.Index;
        }

        string small = lead.ToLowerInvariant();
        return wording.Routes.Values.SelectMany(r => r).Select(r => LastIndexOf(r, small)).DefaultIfEmpty(-1).Max();
    }

    private static int LastIndexOf(string phrase, string text)
    {
        int last = -1;
        for (int at = Phrase.IndexOf(phrase, text); at >= 0; )
        {
            last = at;
            int next = Phrase.IndexOf(phrase, text[(at + 1)..]);
            at = next < 0 ? -1 : at + 1 + next;
        }

        return last;
    }

    private ExposureRoute? RouteOf(string around, string unit)
    {
        bool Has(string route) => wording.Routes[route].Any(r => Phrase.IsIn(r, around));
        return unit switch
        {
            "mg/kg" when Has("oral") => ExposureRoute.Oral,
            "mg/kg" when Has("dermal") => ExposureRoute.Dermal,
            "mg/l" when Has("vapour") => ExposureRoute.InhalationVapour,
            "mg/l" when Has("dust") => ExposureRoute.InhalationDust,
            "ppm" or "ppmv" when Has("gas") => ExposureRoute.InhalationGas,
            _ => null,
        };
    }

    private MFactors? ReadM(string text, char[] rest, bool bare, List<string> doubts)
    {
        double? acute = null;
        double? chronic = null;
        foreach (Match match in mPattern.Matches(text))
        {
            Blank(rest, match.Index, match.Length);
            double m = double.Parse(match.Groups["m"].Value, CultureInfo.InvariantCulture);
            if (m < 1)
            {
                doubts.Add($"'{match.Value.Trim()}' is no M-factor; it was left out");
                continue;
            }

            string when = Phrase.Plain(match.Groups["when"].Value);
            bool isAcute = wording.Lists["acute"].Contains(when);
            bool isChronic = wording.Lists["chronic"].Contains(when);
            acute = isChronic ? acute : Math.Max(acute ?? 0, m);
            chronic = isAcute ? chronic : Math.Max(chronic ?? 0, m);
        }

        if (
            bare
            && acute is null
            && chronic is null
            && BareM().Match(text) is { Success: true } figure
            && figure.Groups["m"].Value.Trim('0').Length > 0
        )
        {
            Blank(rest, figure.Index, figure.Length);
            acute = chronic = double.Parse(figure.Groups["m"].Value, CultureInfo.InvariantCulture);
        }

        if (acute is > 1 && !IsPowerOfTen(acute.Value) || chronic is > 1 && !IsPowerOfTen(chronic.Value))
        {
            doubts.Add("M-factors are powers of ten; this one is not");
        }

        return acute is null && chronic is null ? null : new MFactors(acute, chronic);
    }

    private static bool IsPowerOfTen(double m) => Math.Abs(Math.Log10(m) - Math.Round(Math.Log10(m))) < 1e-9;

    private List<Token> Tokens(string text, char[] rest)
    {
        var tokens = new List<Token>();
        foreach (Match match in classPattern.Matches(text))
        {
            string category = match.Groups["cat"].Value.ToUpperInvariant();
            if (CodePattern().IsMatch(match.Groups["name"].Value))
            {
                continue;
            }

            if (
                category.Length == 0
                && !vocabulary.Categories.Any(c => c.Category.Length == 0 && SameName(c.ClassCode, match.Groups["name"].Value))
            )
            {
                continue;
            }

            Blank(rest, match.Index, match.Length);
            tokens.Add(new Token(match.Index, match.Index + match.Length, ClassOf(match.Groups["name"].Value, category), true));
        }

        foreach (Match match in CodePattern().Matches(text))
        {
            Blank(rest, match.Index, match.Length);
            tokens.Add(new Token(match.Index, match.Index + match.Length, match.Value.Replace(" ", "", StringComparison.Ordinal), false));
        }

        return [.. tokens.OrderBy(t => t.Start)];
    }

    private static bool SameName(string code, string printed) => Letters(code) == Letters(printed);

    private static string Letters(string text) => new([.. text.Where(char.IsLetter).Select(char.ToLowerInvariant)]);

    // The class's own abbreviation, whatever way it was printed.
    private string ClassOf(string printed, string category)
    {
        string plain = Phrase.Plain(printed);
        string name =
            codeByLongName.GetValueOrDefault(plain)
            ?? vocabulary.Categories.Select(c => c.ClassCode).FirstOrDefault(c => SameName(c, printed))
            ?? printed.Trim();
        name = name switch
        {
            "Skin Corr./Irrit." => category.StartsWith('1') ? "Skin Corr." : "Skin Irrit.",
            "Eye Dam./Irrit." => category.StartsWith('1') ? "Eye Dam." : "Eye Irrit.",
            _ => name,
        };
        return $"{name} {category}".Trim();
    }

    private static IEnumerable<string> Limits(string text, char[] rest, List<Token> tokens, List<string> doubts)
    {
        foreach (Match condition in LimitPattern().Matches(text))
        {
            Blank(rest, condition.Index, condition.Length);
            Token? owner =
                tokens.LastOrDefault(t => t.IsClass && t.End <= condition.Index && IsClose(tokens, t, condition.Index))
                ?? tokens.FirstOrDefault(t => t.IsClass && t.Start >= condition.Index + condition.Length);
            if (owner is null)
            {
                doubts.Add($"'{condition.Value.Trim()}': it is not clear which class this limit belongs to; it was left out");
                continue;
            }

            Token? code = tokens.FirstOrDefault(t => !t.IsClass && t.Start >= owner.End && t.Start - owner.End < 6);
            tokens.Remove(owner);
            if (code is not null)
            {
                tokens.Remove(code);
            }

            string printed = condition
                .Value.Trim()
                .Replace("≥", ">=", StringComparison.Ordinal)
                .Replace("≤", "<=", StringComparison.Ordinal)
                .Replace(',', '.');
            yield return $"{owner.Text}{(code is null ? "" : ", " + code.Text)}: {printed}";
        }
    }

    // A limit belongs to the class right before it, with at most its statement in between.
    private static bool IsClose(List<Token> tokens, Token owner, int at) =>
        at - owner.End < 16 && !tokens.Any(t => t.IsClass && t.Start > owner.Start && t.End <= at);

    private List<string>? Classes(List<Token> tokens, string text, char[] rest, List<string> doubts)
    {
        List<Token> classes = [.. tokens.Where(t => t.IsClass)];
        List<Token> codes = [.. tokens.Where(t => !t.IsClass)];
        var found = new List<string>();
        bool codesComeFirst =
            tokens.Count > 1
            && !tokens[0].IsClass
            && codes.Count == classes.Count
            && tokens.Where((t, i) => t.IsClass == (i % 2 == 1)).Count() == tokens.Count;
        var unused = new List<Token>(codes);
        foreach (Token one in classes)
        {
            IEnumerable<Token> byNearness = codesComeFirst
                ? unused.OrderBy(c => c.Start < one.Start ? one.Start - c.Start : 1000 + c.Start)
                : unused.OrderBy(c => c.Start > one.Start ? c.Start - one.Start : 1000 + one.Start);
            Token? code = byNearness.FirstOrDefault(c => vocabulary.Parse($"{one.Text}, {c.Text}").Success);
            if (code is not null)
            {
                unused.Remove(code);
                found.Add($"{one.Text}, {code.Text}");
                continue;
            }

            Parsed<HazardClaim> alone = vocabulary.Parse(one.Text);
            Token? shared = !alone.Success ? null : codes.FirstOrDefault(c => vocabulary.Parse($"{one.Text}, {c.Text}").Success);
            if (!alone.Success)
            {
                doubts.Add(alone.Reason);
                found.Add(one.Text);
            }
            else
            {
                found.Add($"{one.Text}, {alone.Value.Statement}");
                if (codes.Count > 0 && shared is null)
                {
                    doubts.Add($"the sheet gives {one.Text} without its statement {alone.Value.Statement}");
                }
            }
        }

        foreach (Token code in unused)
        {
            AddBareCode(code.Text, found, classes.Count, doubts);
        }

        found = [.. found.Distinct()];
        if (found.Count > 0)
        {
            return found;
        }

        string plain = Phrase.Plain(text);
        string? phrase = wording.Lists["notClassified"].OrderByDescending(p => p.Length).FirstOrDefault(p => Phrase.IsIn(p, plain));
        if (phrase is null)
        {
            return null;
        }

        int at = text.ToLowerInvariant().IndexOf(phrase, StringComparison.Ordinal);
        if (at >= 0)
        {
            Blank(rest, at, phrase.Length);
        }

        return [];
    }

    // A statement without its class: the class follows when only one has the statement, and is doubtful in any case.
    private void AddBareCode(string code, List<string> found, int classes, List<string> doubts)
    {
        if (code.StartsWith("EUH", StringComparison.Ordinal) && vocabulary.Parse(code).Success)
        {
            found.Add(code);
            return;
        }

        List<HazardCategory> owners =
        [
            .. vocabulary.Categories.Where(c => c.Statement == code[..Math.Min(4, code.Length)] || c.Statement == code),
        ];
        if (owners.Count == 0)
        {
            doubts.Add($"{code} belongs to no class that is known here");
            found.Add(code);
            return;
        }

        HazardCategory milder = owners[0];
        bool oneClass = owners.All(o => o.ClassCode == milder.ClassCode);
        if (owners.Count > 1 && oneClass)
        {
            milder = owners.FirstOrDefault(o => o.Category == "1") ?? milder;
        }

        if (owners.Count > 1 && !oneClass)
        {
            doubts.Add($"{code} stands there without its class, and {string.Join(", ", owners.Select(o => o.Code))} have it");
            found.Add(code);
            return;
        }

        string text = $"{milder.ClassCode} {milder.Category}, {code}";
        if (!found.Contains(text))
        {
            doubts.Add(
                $"{code} stands there without its class; it was read as {milder.Code}{(owners.Count > 1 ? ", though the sheet may mean another category" : "")}"
            );
            found.Add(text);
        }
        else if (classes > 0)
        {
            doubts.Add($"{code} stands there twice");
        }
    }

    private static string Leftover(string rest)
    {
        IEnumerable<string> words = rest.Split(
            [' ', ',', ';', ':', '(', ')', '[', ']', '/', '-', '\u2013', '*', '.', '=', '+', '&', '|'],
            StringSplitOptions.RemoveEmptyEntries
        );
        return string.Join(' ', words.Where(w => w.Any(char.IsLetterOrDigit) && !Harmless().IsMatch(w)));
    }

    private static void Blank(char[] text, int start, int length) => Array.Fill(text, ' ', start, length);

    private static string Alternatives(IEnumerable<string> phrases) =>
        string.Join(
            '|',
            phrases.OrderByDescending(p => p.Length).Select(p => Regex.Escape(p).Replace(@"\ ", @"\s+", StringComparison.Ordinal))
        );

    // The blank where a narrow column breaks a statement's code: "EUH06 6", "H36 1d", "H360F d".
    [GeneratedRegex(
        @"(?<=\bEUH[0-9]) (?=[0-9]{2}\b)|(?<=\bEUH[0-9]{2}) (?=[0-9]\b)|(?<=\bH[2-4]) (?=[0-9]{2}[A-Za-z]{0,2}\b)|(?<=\bH[2-4][0-9]) (?=[0-9][A-Za-z]{0,2}\b)|(?<=\bH36[01]) (?=[FfDd]{1,2}\b)|(?<=\bH36[01][FfDd]) (?=[FfDd]\b)|(?<=\bH350) (?=i\b)"
    )]
    private static partial Regex BrokenCode();

    /// <summary>A class or a statement at a place of the text.</summary>
    private sealed record Token(int Start, int End, string Text, bool IsClass);

    [GeneratedRegex(@"\b(?:EUH|H)\s?[0-9]{3}(?:[A-Za-z]{0,2})?\b")]
    private static partial Regex CodePattern();

    [GeneratedRegex(
        @"C\s*(?:>=|≥|>)\s*[0-9]+(?:[.,][0-9]+)?\s*%|[0-9]+(?:[.,][0-9]+)?\s*%?\s*(?:<=|≤|<)\s*C\s*(?:<=|≤|<)\s*[0-9]+(?:[.,][0-9]+)?\s*%"
    )]
    private static partial Regex LimitPattern();

    [GeneratedRegex(
        @"(?<sign>[<>≤≥]=?)?\s?(?<value>[0-9][0-9.,]{0,12}(?:\s[0-9]{3})?)\s?(?<unit>mg\s?/\s?kg|mg\s?/\s?l|ppmV?)(?![\p{L}])(?:\s?\(?(?:bw|kg|kw|pc|4\s?h)\)?(?![\p{L}])){0,2}",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Estimate();

    [GeneratedRegex(@"\s+")]
    private static partial Regex RepeatedBlanks();

    [GeneratedRegex(@"([^\p{L}\p{Nd}\s])\1{2,}")]
    private static partial Regex RepeatedSigns();

    [GeneratedRegex(@"^\s*(?<m>[0-9]{1,6})\s*$")]
    private static partial Regex BareM();

    [GeneratedRegex(@"^[1-9][0-9]{0,2}[.,][0-9]{3}$")]
    private static partial Regex Thousands();

    [GeneratedRegex(
        @"^(?:GHS0[0-9]|Dgr|Wng|Danger|Warning|Gefahr|Achtung|CLP|SCL|LCS|LCE|ATE|ETA|STA|bw|and|und|et|y|e|en|i|oral|dermal|cat|m|H)$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Harmless();
}
