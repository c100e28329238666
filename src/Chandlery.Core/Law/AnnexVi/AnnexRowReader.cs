using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.AnnexVi;

/// <summary>Reads a line of the table of harmonised classes.</summary>
internal sealed partial class AnnexRowReader(HazardVocabulary vocabulary, AnnexRules rules)
{
    public AnnexRules Rules => rules;

    public Parsed<HarmonisedEntry> Read(string line)
    {
        string[] cells = line.Split('\t');
        if (cells.Length != AnnexLine.Cells)
        {
            return Parsed.Not<HarmonisedEntry>(
                $"The line has {cells.Length} cells instead of {AnnexLine.Cells}: write {AnnexLine.Head.Replace("\t", ", ", StringComparison.Ordinal)}, with a tab between them."
            );
        }

        if (rules.Act(cells[8]) is not { } act)
        {
            string near = Suggestion.Nearest(cells[8], [.. rules.Acts.Select(a => a.Id)]) is { } id ? $" Did you mean '{id}'?" : "";
            return Parsed.Not<HarmonisedEntry>($"'{cells[8]}' is no act of annex-vi.yaml.{near}");
        }

        if (!DateOnly.TryParseExact(cells[9], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly from))
        {
            return Parsed.Not<HarmonisedEntry>($"'{cells[9]}' is no day: write it as 2026-11-25.");
        }

        List<Parsed<HarmonisedClass>> classes = [.. Parts(cells[4]).Concat(Parts(cells[5])).Select(Class)];
        if (classes.Find(c => !c.Success) is { } unread)
        {
            return Parsed.Not<HarmonisedEntry>(unread.Reason!);
        }

        IReadOnlyList<string> figures = [.. Parts(cells[6])];
        List<(string Figure, Parsed<SpecificLimit> Limit)> limits = [.. figures.Select(f => (f, SpecificLimitText.Parse(f, vocabulary)))];
        List<double> factors = [.. figures.Select(f => Factor().Match(f)).Where(m => m.Success).Select(m => Number(m.Groups[1].Value))];
        return Parsed.As(
            new HarmonisedEntry
            {
                IndexNumber = cells[0],
                Members = Members(cells[1], cells[2], cells[3]),
                Classes = [.. classes.Select(c => c.Value)],
                Limits = [.. limits.Where(l => l.Limit.Success).Select(l => l.Limit.Value)],
                AcuteM = factors.Count > 0 ? factors[0] : null,
                // The table gives the factor of the acute class first; a single one stands for both.
                ChronicM = factors.Count > 0 ? factors[^1] : null,
                Toxicity =
                [
                    .. figures.Select(Estimate).OfType<ToxicityEstimate>().GroupBy(e => e.Route).Select(g => g.MinBy(e => e.Value)!),
                ],
                Figures = figures,
                Unread = [.. limits.Where(l => !l.Limit.Success && IsOfARule(l.Figure)).Select(l => l.Figure)],
                Conditions = [.. Conditions(cells[3])],
                Notes = cells[7].Split(' ', StringSplitOptions.RemoveEmptyEntries),
                Act = act,
                From = from,
            }
        );
    }

    /// <summary>The names of a line's substances.</summary>
    public static IEnumerable<string> NamesOf(string line) =>
        line.Split('\t') is { } cells && cells.Length == AnnexLine.Cells ? Marked(cells[3]).Values.SelectMany(Alternatives) : [];

    private Parsed<HarmonisedClass> Class(string text)
    {
        bool isMinimum = Minimum().IsMatch(text);
        string plain = Stars().Replace(text, "").Replace(" ,", ",", StringComparison.Ordinal).Trim();

        if (IsNotComputed(text))
        {
            return Parsed.As(new HarmonisedClass(text, null, isMinimum));
        }

        // The route that the table names is left off: a statement without it says more, not less. Organs stay.
        Parsed<HazardClaim> claim = vocabulary.Parse(Routes().Replace(plain, ""));
        return claim.Success ? Parsed.As(new HarmonisedClass(text, claim.Value, isMinimum)) : Parsed.Not<HarmonisedClass>(claim.Reason!);
    }

    private bool IsNotComputed(string text) => rules.NotComputed.Any(n => text.StartsWith(n, StringComparison.Ordinal));

    // A limit of a class that a rule computes; of physical hazards none does.
    private bool IsOfARule(string figure) =>
        figure.Contains(": C ", StringComparison.Ordinal)
        && !IsNotComputed(figure)
        && vocabulary.Parse(figure[..figure.LastIndexOf(':')]) is { Success: true, Value.Category.Area: not HazardArea.Physical };

    private static List<EntryMember> Members(string cas, string ec, string names)
    {
        Dictionary<string, string> casByMark = Marked(cas);
        Dictionary<string, string> ecByMark = Marked(ec);
        return
        [
            .. Marked(names).Select(n => new EntryMember(Alternatives(n.Value), Known(casByMark, n.Key), Known(ecByMark, n.Key))),
            .. casByMark
                .Keys.Union(ecByMark.Keys)
                .Except(Marked(names).Keys)
                .Select(mark => new EntryMember([], Known(casByMark, mark), Known(ecByMark, mark))),
        ];
    }

    private static string? Known(Dictionary<string, string> byMark, string mark) =>
        byMark.TryGetValue(mark, out string? number) && number != "-" ? number : null;

    // "5989-27-5 [2] | 138-86-3 [1]": by the figure that tells the substances of an entry apart; an entry of one has none.
    private static Dictionary<string, string> Marked(string cell)
    {
        var parts = new Dictionary<string, string>();
        foreach (string part in cell.Split(" | ", StringSplitOptions.RemoveEmptyEntries))
        {
            Match mark = Mark().Match(part);
            parts.TryAdd(mark.Groups[1].Value, mark.Success ? part[..mark.Index].Trim() : part);
        }

        return parts;
    }

    // "dipentene; limonene": each is a name of the law. What stands in brackets between them is a condition, and the parts of a
    // reaction mass are no names of their own.
    private static IReadOnlyList<string> Alternatives(string names) =>
        names.Contains(" of:", StringComparison.Ordinal)
            ? [names]
            : [.. names.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Where(n => n[0] != '[')];

    private static IEnumerable<string> Conditions(string names) =>
        Marked(names)
            .Values.SelectMany(n => n.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            .Where(n => n[0] == '[')
            .Select(n => n.Trim('[', ']'));

    private static ToxicityEstimate? Estimate(string figure)
    {
        Match match = AteText().Match(figure);
        if (!match.Success)
        {
            return null;
        }

        ExposureRoute route = (match.Groups["route"].Value, match.Groups["form"].Value) switch
        {
            ("oral", _) => ExposureRoute.Oral,
            ("dermal", _) => ExposureRoute.Dermal,
            (_, var form) when form.Contains("dust", StringComparison.Ordinal) => ExposureRoute.InhalationDust,
            (_, var form) when form.Contains("vapour", StringComparison.Ordinal) => ExposureRoute.InhalationVapour,
            _ => ExposureRoute.InhalationGas,
        };
        return new ToxicityEstimate(route, Number(match.Groups["value"].Value));
    }

    private static IEnumerable<string> Parts(string cell) =>
        cell.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@" \[([0-9]+)\]$", RegexOptions.CultureInvariant)]
    private static partial Regex Mark();

    [GeneratedRegex(@"(?<!\*)\*(?!\*),|(?<!\*)\*(?!\*)$", RegexOptions.CultureInvariant)]
    private static partial Regex Minimum();

    [GeneratedRegex(@"\*+", RegexOptions.CultureInvariant)]
    private static partial Regex Stars();

    [GeneratedRegex(@" \((?:(?:inhalation|oral|dermal)(?:, )?)+\)| \(causing [^)]*\)", RegexOptions.CultureInvariant)]
    private static partial Regex Routes();

    [GeneratedRegex(@"^M = ([0-9.]+)$", RegexOptions.CultureInvariant)]
    private static partial Regex Factor();

    [GeneratedRegex(
        @"^(?<route>oral|dermal|inhalation): ATE = (?<value>[0-9.]+) (?:mg/kg bw|mg/L|ppmV?) ?(?<form>.*)$",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex AteText();
}
