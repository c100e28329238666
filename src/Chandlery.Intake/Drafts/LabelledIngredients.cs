using Chandlery.Intake.Pages;
using Chandlery.Intake.Tables;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>Reads ingredients that stand one under the other with labels, instead of in a table.</summary>
internal static class LabelledIngredients
{
    private const double ClearlyWider = 1.2;
    private static readonly (string Label, string Kind)[] Kinds =
    [
        ("casNumber", ColumnKind.Cas),
        ("ecNumber", ColumnKind.Ec),
        ("share", ColumnKind.Share),
        ("classes", ColumnKind.Classes),
        ("limits", ColumnKind.Limits),
        ("m", ColumnKind.M),
        ("ate", ColumnKind.Ate),
        ("ignored", "ignored"),
        ("substance", ColumnKind.Name),
    ];

    /// <summary>The ingredients among the lines of section 3; empty when the lines have no such form.</summary>
    public static IEnumerable<DraftIngredient> Of(IReadOnlyList<TextLine> lines, SheetWording wording, IngredientRows rows)
    {
        var blocks = new List<Dictionary<string, List<TextLine>>>();
        string? last = null;
        bool named = lines.Any(l => KindOf(l, wording)?.Kind == ColumnKind.Name && !ColumnKind.HasData(l.Text));
        List<TextLine> own = [.. lines.TakeWhile(l => !Phrase.AnyIn(wording.Lists["tableEnds"], l.Text))];
        for (int i = 0; i < own.Count; i++)
        {
            TextLine line = own[i];
            (string Kind, TextLine Value)? labelled = KindOf(line, wording);
            bool starts = labelled?.Kind == (named ? ColumnKind.Name : ColumnKind.Cas);
            if (starts)
            {
                blocks.Add([]);
                if (!named && i > 0)
                {
                    blocks[^1][ColumnKind.Name] = NameAbove(own, i, wording);
                    Forget(blocks, blocks[^1][ColumnKind.Name]);
                }
            }

            if (blocks.Count > 0 && labelled is { } l)
            {
                last = l.Kind;
                Add(blocks[^1], l.Kind, l.Value);
            }
            else if (blocks.Count > 0 && last is not null && labelled is null)
            {
                Add(blocks[^1], last, line);
            }
        }

        foreach (
            Dictionary<string, List<TextLine>> block in blocks.Where(b => b.ContainsKey(ColumnKind.Cas) || b.ContainsKey(ColumnKind.Share))
        )
        {
            block.Remove("ignored");
            if (rows.Of(block.ToDictionary(p => p.Key, p => new Cell([.. p.Value.Where(v => v.Words.Count > 0)]))) is { } ingredient)
            {
                bool isJoined = !named && block.TryGetValue(ColumnKind.Name, out List<TextLine>? name) && name.Count > 1;
                yield return isJoined
                    ? ingredient with
                    {
                        Doubts = [.. ingredient.Doubts, "its name was put together from the lines above the labels"],
                    }
                    : ingredient;
            }
        }
    }

    // The line before the first label, and those above it as far as they stand no wider apart and say nothing but words.
    private static List<TextLine> NameAbove(List<TextLine> lines, int at, SheetWording wording)
    {
        List<TextLine> name = [lines[at - 1]];
        double pitch = lines[at].Frame.Bottom - lines[at - 1].Frame.Bottom;
        for (int i = at - 2; i >= 0; i--)
        {
            bool isMore =
                lines[i].IsBeside(name[0])
                && name[0].Frame.Bottom - lines[i].Frame.Bottom < ClearlyWider * pitch
                && KindOf(lines[i], wording) is null
                && !ColumnKind.HasData(lines[i].Text)
                && !lines[i].Text.EndsWith('.')
                && !lines[i].Text.Contains('=', StringComparison.Ordinal);
            if (!isMore)
            {
                break;
            }

            name.Insert(0, lines[i]);
        }

        return name;
    }

    // A name before the first label had been taken for the end of the block above.
    private static void Forget(List<Dictionary<string, List<TextLine>>> blocks, List<TextLine> name)
    {
        if (blocks.Count > 1)
        {
            foreach (List<TextLine> lines in blocks[^2].Values)
            {
                lines.RemoveAll(name.Contains);
            }
        }
    }

    private static void Add(Dictionary<string, List<TextLine>> block, string kind, TextLine line)
    {
        if (!block.TryGetValue(kind, out List<TextLine>? lines))
        {
            block[kind] = lines = [];
        }

        lines.Add(line);
    }

    // The kind of the label that the line starts with, and the words after it.
    private static (string Kind, TextLine Value)? KindOf(TextLine line, SheetWording wording)
    {
        foreach ((string label, string kind) in Kinds)
        {
            if (
                Phrase.AfterLabel(line.Text, wording.Labels[label]) is not { } rest
                || (rest.Length > 0 && !line.Text.Contains(':', StringComparison.Ordinal) && line.Phrases().Count < 2)
            )
            {
                continue;
            }

            int words = rest.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length;
            return (kind, line.Only([.. line.Words.TakeLast(words).DefaultIfEmpty(line.Words[^1] with { Text = "" })]));
        }

        return null;
    }
}
