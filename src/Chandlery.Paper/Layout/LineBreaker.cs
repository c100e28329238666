using System.Runtime.CompilerServices;
using Chandlery.Paper.Blocks;
using Chandlery.Paper.Fonts;

namespace Chandlery.Paper.Layout;

/// <summary>Cuts paragraphs into pieces and fills lines with them.</summary>
internal static class LineBreaker
{
    // "d-Limonene" stays whole.
    private const int ShortestBeforeBreak = 3;
    private static readonly char[] BreakAfter = ['/', '-'];

    // A paragraph is laid out at many sizes, and its pieces are the same at all of them.
    private static readonly ConditionalWeakTable<IReadOnlyList<Span>, List<Piece>> Known = [];

    /// <summary>The pieces of a paragraph, in order; kept for as long as its spans are.</summary>
    public static List<Piece> Pieces(IReadOnlyList<Span> spans) => Known.GetValue(spans, Cut);

    private static List<Piece> Cut(IReadOnlyList<Span> spans)
    {
        var pieces = new List<Piece>();
        bool space = false;
        foreach (Span span in spans)
        {
            string[] words = span.Text.Split(' ');
            for (int i = 0; i < words.Length; i++)
            {
                space |= i > 0;
                if (words[i].Length == 0)
                {
                    continue;
                }

                // Words that must not be torn apart are one piece, with the blank inside.
                string word = words[i];
                while (i + 1 < words.Length && words[i + 1].Length > 0 && Glue.Holds(words[i], words[i + 1], Next(words, i + 2)))
                {
                    word += " " + words[++i];
                }

                bool tied = !space && pieces.Count > 0;
                foreach (string part in Seams(word))
                {
                    pieces.Add(new Piece(part, span.Weight, space) { IsTied = tied });
                    space = false;
                    tied = false;
                }
            }
        }

        return pieces;
    }

    private static string Next(string[] words, int at) => at < words.Length ? words[at] : "";

    // Where a word may be broken without another sign.
    private static IEnumerable<string> Seams(string word)
    {
        int start = 0;
        for (int i = 0; i + 1 < word.Length; i++)
        {
            if (Array.IndexOf(BreakAfter, word[i]) >= 0 && i >= start + ShortestBeforeBreak && char.IsLetter(word[i + 1]))
            {
                yield return word[start..(i + 1)];
                start = i + 1;
            }
        }

        yield return word[start..];
    }

    /// <summary>Width of a piece at a type size, millimetres.</summary>
    public static double Width(string text, Weight weight, double sizeMm)
    {
        Face face = Face.Of(weight);
        return face.Shape(text).Advance * sizeMm / face.UnitsPerEm;
    }

    /// <summary>How many pieces from <paramref name="first"/> on fit a width; at least one, with <paramref name="overflowMm"/> when even that is too wide.</summary>
    public static int Fill(List<Piece> pieces, int first, double widthMm, double sizeMm, out double overflowMm)
    {
        double used = 0;
        int count = 0;
        overflowMm = 0;
        for (int i = first; i < pieces.Count; i++)
        {
            Piece piece = pieces[i];
            double space = i > first && piece.SpaceBefore ? Face.Of(piece.Weight).BlankWidth * sizeMm : 0;
            double width = piece.WidthEm * sizeMm;
            if (used + space + width > widthMm)
            {
                if (count == 0)
                {
                    overflowMm = width - widthMm;
                    return 1;
                }

                break;
            }

            used += space + width;
            count++;
        }

        while (count > 1 && first + count < pieces.Count && pieces[first + count].IsTied)
        {
            count--;
        }

        return count;
    }
}
