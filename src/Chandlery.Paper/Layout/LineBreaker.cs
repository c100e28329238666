using System.Buffers;
using System.Runtime.CompilerServices;
using Chandlery.Core.Law;
using Chandlery.Paper.Blocks;
using Chandlery.Paper.Fonts;

namespace Chandlery.Paper.Layout;

/// <summary>Cuts paragraphs into pieces and fills lines with them.</summary>
internal static class LineBreaker
{
    // "d-Limonene" stays whole.
    private const int ShortestBeforeBreak = 3;
    private static readonly SearchValues<char> BreakAfter = SearchValues.Create('/', '-');

    // On lines of more type sizes words are so short that breaking them would win no room.
    private const double NarrowEm = 28;

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
                if (word.AsSpan().IndexOfAny(BreakAfter) < 0 && !word.Contains(WordBreaks.Soft))
                {
                    pieces.Add(new Piece(word, span.Weight, space) { IsTied = tied });
                    space = false;
                    continue;
                }

                foreach (string part in Seams(word))
                {
                    bool soft = false;
                    foreach (string syllables in part.Split(WordBreaks.Soft))
                    {
                        pieces.Add(new Piece(syllables, span.Weight, space) { IsTied = tied, IsSoft = soft });
                        space = false;
                        tied = false;
                        soft = true;
                    }
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
            if (BreakAfter.Contains(word[i]) && i >= start + ShortestBeforeBreak && char.IsLetter(word[i + 1]))
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
            double space = i > first ? piece.BlankEm * sizeMm : 0;
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

        while (first + count < pieces.Count && !MayEnd(pieces[first + count], used, widthMm, sizeMm))
        {
            if (count == 1)
            {
                overflowMm = pieces[first + 1].IsSoft ? used + (HyphenMm(pieces[first], sizeMm)) - widthMm : 0;
                break;
            }

            count--;
            Piece left = pieces[first + count];
            used -= (left.WidthEm + left.BlankEm) * sizeMm;
        }

        return count;
    }

    /// <summary>Whether a line may end before a piece.</summary>
    /// <param name="next">The piece.</param>
    /// <param name="usedMm">What stands on the line.</param>
    /// <param name="widthMm">Width of the line.</param>
    /// <param name="sizeMm">Type size.</param>
    public static bool MayEnd(Piece next, double usedMm, double widthMm, double sizeMm) =>
        !next.IsTied && (!next.IsSoft || (widthMm < NarrowEm * sizeMm && usedMm + HyphenMm(next, sizeMm) <= widthMm));

    private static double HyphenMm(Piece piece, double sizeMm) => Face.Of(piece.Weight).HyphenWidth * sizeMm;
}
