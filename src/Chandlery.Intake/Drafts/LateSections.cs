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

    // "ATEmix": the whole product's.
    private const string OfMixture = "mix";

    /// <summary>The ingredients with what the later sections say of them, and what these say of nobody that is known.</summary>
    public (IReadOnlyList<DraftIngredient> Ingredients, IReadOnlyList<string> Doubts) Join(
        IReadOnlyList<DraftIngredient> ingredients,
        Sections sections
    )
    {
        char? decimals = DecimalMark.Of(Enumerable.Range(1, LastSection).SelectMany(s => sections[s]).Select(l => l.Text));
        var doubts = new List<string>();
        Dictionary<int, List<(TextLine Line, string? Between)>> toxicity = Blocks(
            ingredients,
            [.. EstimateTables.Headed(sections[11], hazards)],
            (name, line) =>
                doubts.AddRange(
                    hazards.ReadToxicity(line, [], decimals).Count == 0
                        ? []
                        : [$"section 11 gives '{line}' under '{name}', which is no name in section 3: whose estimate is it?"]
                )
        );
        Dictionary<int, List<(TextLine Line, string? Between)>> factors = Blocks(
            ingredients,
            sections[12],
            (name, line) =>
                doubts.AddRange(
                    hazards.ReadM(line) is null
                        ? []
                        : [$"section 12 gives '{line}' under '{name}', which is no name in section 3: whose M-factor is it?"]
                )
        );
        IReadOnlyList<DraftIngredient> joined =
        [
            .. ingredients.Select(
                (i, at) => WithFactors(WithToxicity(i, toxicity.GetValueOrDefault(at) ?? [], decimals), factors.GetValueOrDefault(at) ?? [])
            ),
        ];
        return (joined, doubts);
    }

    // Lines by the ingredient that they are about, each with the words that stand between the name and it and may be another name.
    private Dictionary<int, List<(TextLine Line, string? Between)>> Blocks(
        IReadOnlyList<DraftIngredient> ingredients,
        IReadOnlyList<TextLine> lines,
        Action<string, string> tellOfNobody
    )
    {
        var blocks = new Dictionary<int, List<(TextLine, string?)>>();
        List<string> names = [.. ingredients.Select(i => Phrase.Plain(i.Name.Value))];
        int current = -1;
        string? between = null;
        foreach (TextLine line in lines)
        {
            int named = Named(ingredients, names, line);
            if (named >= 0)
            {
                current = named;
                between = null;
            }
            else if (ColumnKind.HasCas(line.Text) || SubHeading().IsMatch(line.Text))
            {
                current = -1;
                between = null;
            }
            else if (MayBeName(line.Text))
            {
                between = current < 0 ? line.Text : between ?? line.Text;
            }

            if (current < 0 && between is not null && !line.Text.Contains(OfMixture, StringComparison.OrdinalIgnoreCase))
            {
                tellOfNobody(between, line.Text);
            }

            if (current >= 0)
            {
                if (!blocks.TryGetValue(current, out List<(TextLine, string?)>? block))
                {
                    blocks[current] = block = [];
                }

                block.Add((line, between));
            }
        }

        return blocks;
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
