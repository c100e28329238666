using System.Globalization;
using Chandlery.Intake.Pictures;

namespace Chandlery.Intake.Pages;

/// <summary>Reads what tesseract recognised: a tab-separated line for each word, with its place in pixels.</summary>
internal static class RecognisedWords
{
    private const int Columns = 12;
    private const string WordLevel = "5";
    private const double HeightOfTypeSize = 0.95;
    private const double TallestOfUsual = 2.5;
    private const double DescentOfTypeSize = 0.2;
    private const double AscentOfTypeSize = 0.75;

    // Signs that mean something alone; others are what is left of a line or a stain.
    private static readonly string[] Signs = ["-", "\u2013", "<", ">", "\u2264", "\u2265", "%", "<=", ">=", "=", "&", "+", ";", "/"];
    private const string Descending = "gjpqy,;()[]{}|Q/";

    /// <summary>The words on the page.</summary>
    /// <param name="recognised">What was recognised.</param>
    /// <param name="place">Where the picture stands on the page.</param>
    public static IReadOnlyList<Word> Of(PictureWords recognised, Box place)
    {
        double across = place.Width / recognised.Width;
        double down = place.Height / recognised.Height;
        List<(string Line, string Text, Box Box)> words = [];
        foreach (string[] cells in recognised.Table.Split('\n').Select(l => l.TrimEnd('\r').Split('\t')))
        {
            if (
                cells.Length != Columns
                || cells[0] != WordLevel
                || !cells[11].Any(char.IsLetterOrDigit) && !Signs.Contains(cells[11].Trim())
                || Places(cells) is not { } at
                || PieceOf(cells[1], recognised.Pieces) is not { } piece
            )
            {
                continue;
            }

            double left = place.Left + ((piece.Left + at[0]) * across);
            double top = place.Top + ((piece.Top + at[1]) * down);
            words.Add((string.Join(' ', cells[1..5]), cells[11].Trim(), new Box(left, top, left + (at[2] * across), top + (at[3] * down))));
        }

        return words.Count == 0 ? [] : [.. Sized(words)];
    }

    private static PagePiece? PieceOf(string number, IReadOnlyList<PagePiece> pieces) =>
        int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int at) && at >= 1 && at <= pieces.Count
            ? pieces[at - 1]
            : null;

    private static int[]? Places(string[] cells)
    {
        int[] places = new int[4];
        for (int i = 0; i < places.Length; i++)
        {
            if (!int.TryParse(cells[6 + i], NumberStyles.None, CultureInfo.InvariantCulture, out places[i]))
            {
                return null;
            }
        }

        return places;
    }

    // Words of a line have one type size and one baseline; a ruled line that was taken for a letter is far taller than the others.
    private static IEnumerable<Word> Sized(List<(string Line, string Text, Box Box)> words)
    {
        double usual = Median([.. words.Select(w => w.Box.Height)]);
        foreach (IGrouping<string, (string Line, string Text, Box Box)> line in words.GroupBy(w => w.Line))
        {
            List<(string Line, string Text, Box Box)> own = [.. line.Where(w => w.Box.Height < TallestOfUsual * usual)];
            if (own.Count == 0)
            {
                continue;
            }

            double size = Math.Max(usual, own.Max(w => w.Box.Height)) / HeightOfTypeSize;
            string whole = PictureSigns.Mended(string.Join(' ', own.Select(w => w.Text)));
            int at = 0;
            foreach ((_, string recognised, Box box) in own)
            {
                string text = whole.Substring(at, recognised.Length);
                at += recognised.Length + 1;
                double baseline = Baseline(recognised, box, own, size);
                yield return new Word(
                    text,
                    box with
                    {
                        Top = baseline - (AscentOfTypeSize * size),
                        Bottom = baseline + (DescentOfTypeSize * size),
                    },
                    size
                );
            }
        }
    }

    // A sign that does not stand on the baseline, such as a hyphen, has that of the word nearest to it.
    private static double Baseline(string text, Box box, List<(string Line, string Text, Box Box)> line, double size)
    {
        (string _, string nearest, Box place) = text.Any(char.IsLetterOrDigit)
            ? ("", text, box)
            : line.Where(w => w.Text.Any(char.IsLetterOrDigit))
                .DefaultIfEmpty((Line: "", Text: text, Box: box))
                .MinBy(w => Math.Abs(w.Box.CentreX - box.CentreX));
        bool descends = nearest.Any(c => Descending.Contains(c, StringComparison.Ordinal));
        return place.Bottom - (descends ? DescentOfTypeSize * size : 0);
    }

    private static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);
}
