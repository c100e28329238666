using System.Text.RegularExpressions;
using Chandlery.Core.Hazards;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Tables;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>
/// Reads estimates from section 11 and M-factors from section 12: in lines that name an ingredient, or under its name as far as the
/// name of the next one.
/// </summary>
internal sealed partial class LateSections(SheetWording wording, HazardText hazards)
{
    private const int LastSection = 16;
    private const int ShortestPartOfName = 8;
    private const int ShortestPart = 4;
    private const int ShortestTellingWord = 5;

    // "ATEmix": the whole product's.
    private const string OfMixture = "mix";

    /// <summary>The ingredients with what the later sections say of them, and what these say of nobody that is known.</summary>
    public (IReadOnlyList<DraftIngredient> Ingredients, IReadOnlyList<string> Doubts) Join(
        IReadOnlyList<DraftIngredient> ingredients,
        Sections sections
    )
    {
        char? decimals = DecimalMark.Of(Enumerable.Range(1, LastSection).SelectMany(s => sections[s]).Select(l => l.Text));
        Reading toxicity = Read(
            ingredients,
            [.. EstimateTables.Headed(sections[11], hazards)],
            line => hazards.ReadToxicity(line, [], decimals).Count > 0
        );
        Reading factors = Read(ingredients, sections[12], line => hazards.ReadM(line) is not null);
        IReadOnlyList<DraftIngredient> joined =
        [
            .. ingredients.Select(
                (i, at) => WithFactors(WithToxicity(WithPart(i, at, toxicity), toxicity.Of(at), decimals), factors.Of(at))
            ),
        ];
        joined = WithStrays(WithStrays(joined, toxicity, 11), factors, 12);
        return (joined, [.. Told(toxicity, factors)]);
    }

    private static IEnumerable<string> Told(Reading toxicity, Reading factors) =>
        [
            .. toxicity
                .Strays.Where(s => s.IsOfNobody)
                .Select(s => $"section 11 gives '{s.Line}' under '{s.Name}', which is no name in section 3: whose estimate is it?"),
            .. factors
                .Strays.Where(s => s.IsOfNobody)
                .Select(s => $"section 12 gives '{s.Line}' under '{s.Name}', which is no name in section 3: whose M-factor is it?"),
        ];

    private static DraftIngredient WithPart(DraftIngredient ingredient, int at, Reading read) =>
        read.Parts.TryGetValue(at, out string? part)
            ? ingredient with
            {
                Name = ingredient.Name.Doubted($"section 11 says only '{part}'"),
            }
            : ingredient;

    // What stands under a name that no row has may belong to any row whose name is like it, or, where none is, to any that lacks it.
    private IReadOnlyList<DraftIngredient> WithStrays(IReadOnlyList<DraftIngredient> ingredients, Reading read, int section)
    {
        bool Lacks(DraftIngredient i) => section == 11 ? i.Toxicity is null : i.M is null;
        foreach (Stray stray in read.Strays)
        {
            List<DraftIngredient> lacking = [.. ingredients.Where(Lacks)];
            List<DraftIngredient> like = [.. lacking.Where(i => IsLike(i.Name.Value, stray.Name))];
            HashSet<DraftIngredient> meant = [.. like.Count == 0 && stray.IsOfNobody && !ColumnKind.HasCas(stray.Name) ? lacking : like];
            string doubt = $"section {section} gives '{stray.Line}' under '{stray.Name}', which may mean this substance";
            ingredients = [.. ingredients.Select(i => meant.Contains(i) ? i with { Doubts = [.. i.Doubts, doubt] } : i)];
        }

        return ingredients;
    }

    private static bool IsLike(string name, string other)
    {
        HashSet<string> words = [.. Words(other)];
        return Words(name).Any(words.Contains);
    }

    private static IEnumerable<string> Words(string text) =>
        Phrase.Plain(text).Split([' ', ',', '(', ')', '/', '-']).Where(w => w.Length >= ShortestTellingWord);

    // Lines by the ingredient that they are about, each with the words that stand between the name and it and may be another name.
    private Reading Read(IReadOnlyList<DraftIngredient> ingredients, IReadOnlyList<TextLine> lines, Func<string, bool> gives)
    {
        var read = new Reading();
        List<string> names = [.. ingredients.Select(i => Phrase.Plain(i.Name.Value))];
        int current = -1;
        string? between = null;
        foreach (TextLine line in lines)
        {
            int named = Named(ingredients, names, line);
            int part = named >= 0 ? -1 : PartNamed(ingredients, names, line);
            if (named >= 0 || part >= 0)
            {
                current = Math.Max(named, part);
                between = null;
                if (part >= 0)
                {
                    read.Parts.TryAdd(part, line.Phrases()[0].Text);
                }
            }
            else if (ColumnKind.HasCas(line.Text))
            {
                current = -1;
                between = line.Phrases()[0].Text;
            }
            else if (SubHeading().IsMatch(line.Text))
            {
                current = -1;
                between = null;
            }
            else if (NameIn(line) is { } name)
            {
                between = current < 0 || gives(line.Text) ? name : between ?? name;
            }

            bool isStray = between is not null && gives(line.Text) && !line.Text.Contains(OfMixture, StringComparison.OrdinalIgnoreCase);
            if (isStray)
            {
                read.Strays.Add(new Stray(between!, line.Text, current < 0));
            }

            if (current >= 0)
            {
                read.Add(current, line, between);
            }
        }

        return read;
    }

    // The name that a line may be, or that stands in it before an estimate.
    private string? NameIn(TextLine line)
    {
        if (MayBeName(line.Text))
        {
            return line.Text;
        }

        IReadOnlyList<TextLine> phrases = line.Phrases();
        string first = phrases[0].Text;
        bool isBefore =
            phrases.Count > 1
            && MayBeName(first)
            && !hazards.NamesEstimate(first)
            && !wording.Routes.Values.SelectMany(r => r).Any(r => Phrase.IsIn(r, Phrase.Plain(first)))
            && hazards.NamesEstimate(string.Join(' ', phrases.Skip(1).Select(p => p.Text)));
        return isBefore ? first : null;
    }

    // The only ingredient with a doubted name that begins or ends in what the line says: a heading or a note was taken into it.
    private static int PartNamed(IReadOnlyList<DraftIngredient> ingredients, List<string> names, TextLine line)
    {
        string part = Phrase.Plain(line.Phrases()[0].Text);
        bool HasPart(int i) =>
            ingredients[i].Name.Doubts.Count + ingredients[i].Doubts.Count > 0
            && (names[i].EndsWith(" " + part, StringComparison.Ordinal) || names[i].StartsWith(part + " ", StringComparison.Ordinal));
        List<int> having = part.Length < ShortestPart ? [] : [.. Enumerable.Range(0, names.Count).Where(HasPart)];
        return having.Count == 1 ? having[0] : -1;
    }

    // The ingredient whose number stands in the line, or whose name begins a phrase of it, wholly or as far as the line goes.
    private static int Named(IReadOnlyList<DraftIngredient> ingredients, List<string> names, TextLine line)
    {
        for (int i = 0; i < ingredients.Count; i++)
        {
            if (ingredients[i].Cas is { } cas && ColumnKind.HasCas(cas.Value) && line.Text.Contains(cas.Value, StringComparison.Ordinal))
            {
                return i;
            }
        }

        List<string> phrases = [.. line.Phrases().Select(p => Phrase.Plain(p.Text)), Phrase.Plain(line.Text)];
        return Enumerable
            .Range(0, names.Count)
            .Where(i =>
                names[i].Length > 3 && phrases.Any(p => Begins(p, names[i]) || (p.Length >= ShortestPartOfName && Begins(names[i], p)))
            )
            .OrderByDescending(i => names[i].Length)
            .FirstOrDefault(-1);
    }

    // By letters and figures alone: section 3 may have broken the name, with a hyphen or without one.
    private static bool Begins(string text, string start)
    {
        int at = 0;
        foreach (char one in start.Where(char.IsLetterOrDigit))
        {
            while (at < text.Length && !char.IsLetterOrDigit(text[at]))
            {
                at++;
            }

            if (at == text.Length || text[at] != one)
            {
                return false;
            }

            at++;
        }

        return at > 0 && (at == text.Length || !char.IsLetterOrDigit(text[at]) || start[^1] == '-');
    }

    // A line without a figure with a unit, which is no heading of a hazard class either.
    private bool MayBeName(string text)
    {
        string plain = Phrase.Plain(text);
        return text.Any(char.IsLetter)
            && !Measured().IsMatch(text)
            && hazards.ReadM(text) is null
            && !wording.ClassNames.Keys.Any(k => plain.StartsWith(Phrase.Plain(k), StringComparison.Ordinal))
            && !text.Contains(':', StringComparison.Ordinal);
    }

    private DraftIngredient WithToxicity(DraftIngredient ingredient, IReadOnlyList<(TextLine Line, string? Between)> lines, char? decimals)
    {
        var found = new List<ToxicityEstimate>();
        var unread = new List<string>();
        var doubts = new List<string>();
        TextLine? where = null;
        foreach ((TextLine line, string? between) in lines)
        {
            var own = new List<string>();
            string text = string.Join(' ', line.Phrases().Select(p => DecimalMark.WithoutBlanks(p.Text)));
            IReadOnlyList<ToxicityEstimate> read = hazards.ReadToxicity(text, own, decimals);
            if (read.Count + own.Count == 0 && Dose().IsMatch(text))
            {
                unread.Add($"section 11 says '{text}', of which no estimate was understood");
            }

            unread.AddRange(own.Where(d => !d.Contains(HazardText.IsBound, StringComparison.Ordinal)).Select(d => "section 11: " + d));
            foreach (ToxicityEstimate one in read)
            {
                ToxicityEstimate? other = found.Concat(ingredient.Toxicity?.Value ?? []).FirstOrDefault(t => t.Route == one.Route);
                if (other is null)
                {
                    found.Add(one);
                    where ??= line;
                    doubts.AddRange(between is null ? [] : [$"between the name in section 11 and the estimate stands '{between}'"]);
                }
                else if (Math.Abs(other.Value - one.Value) > 1e-9)
                {
                    unread.Add($"the sheet gives different estimates for {one.Route}; the first one is drafted");
                }
            }
        }

        return ingredient with
        {
            Toxicity =
                where is null ? ingredient.Toxicity
                : ingredient.Toxicity is { } known
                    ? known with
                    {
                        Value = [.. known.Value, .. found],
                        Doubts = [.. known.Doubts, .. doubts],
                    }
                : new Found<IReadOnlyList<ToxicityEstimate>>(found, ingredient.Name.Document, where.Page, where.Box, doubts),
            Doubts = [.. ingredient.Doubts, .. unread.Distinct()],
        };
    }

    private DraftIngredient WithFactors(DraftIngredient ingredient, IReadOnlyList<(TextLine Line, string? Between)> lines)
    {
        Found<MFactors>? m = null;
        foreach ((TextLine line, string? between) in lines)
        {
            if (hazards.ReadM(line.Text) is not { } read)
            {
                continue;
            }

            IReadOnlyList<string> doubts = between is null ? [] : [$"between the name in section 12 and the factor stands '{between}'"];
            m = m is null
                ? new Found<MFactors>(read, ingredient.Name.Document, line.Page, line.Box, doubts)
                : m.As(new MFactors(m.Value.Acute ?? read.Acute, m.Value.Chronic ?? read.Chronic));
        }

        bool differs = m is not null && ingredient.M is not null && m.Value != ingredient.M.Value;
        return ingredient with
        {
            M = ingredient.M ?? m,
            Doubts = differs
                ? [.. ingredient.Doubts, "sections 3 and 12 give different M-factors; section 3's is drafted"]
                : ingredient.Doubts,
        };
    }

    /// <summary>What a section says of each ingredient.</summary>
    private sealed class Reading
    {
        private readonly Dictionary<int, List<(TextLine Line, string? Between)>> blocks = [];

        /// <summary>The part of an ingredient's name by which the section calls it, where it is not the whole name.</summary>
        public Dictionary<int, string> Parts { get; } = [];

        /// <summary>What stands under names that no ingredient has.</summary>
        public List<Stray> Strays { get; } = [];

        /// <summary>Its lines, each with words that stand between the name and it and may be another name.</summary>
        public IReadOnlyList<(TextLine Line, string? Between)> Of(int ingredient) => blocks.GetValueOrDefault(ingredient) ?? [];

        public void Add(int ingredient, TextLine line, string? between)
        {
            if (!blocks.TryGetValue(ingredient, out List<(TextLine, string?)>? block))
            {
                blocks[ingredient] = block = [];
            }

            block.Add((line, between));
        }
    }

    /// <summary>An estimate or a factor under a name that no ingredient has.</summary>
    private sealed record Stray(string Name, string Line, bool IsOfNobody);

    [GeneratedRegex(@"^[0-9]{1,2}\.[0-9]")]
    private static partial Regex SubHeading();

    // A figure of a dose that is no bound and none a day.
    [GeneratedRegex(
        @"(?<![<>≤≥0-9.,]\s?)[0-9][0-9., ]*\s?mg\s?/\s?kg(?!\s?(?:bw|kg|pc|mc)?\s?[/.]?\s?(?:d|day|tag|jour|d\u00eda|giorno|dag))",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Dose();

    [GeneratedRegex(@"[0-9]\s?(?:mg|g|ppm|%|h\b|°)", RegexOptions.IgnoreCase)]
    private static partial Regex Measured();
}
