using Chandlery.Paper.Blocks;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs;

/// <summary>Sets a name as large as its room allows, on as many lines as make it largest.</summary>
internal static class NameSetter
{
    private const double CapHeight = 0.727;

    /// <summary>The name in its room.</summary>
    /// <param name="order">What to set and how.</param>
    /// <param name="face">The face.</param>
    public static PlacedName Set(NameOrder order, Face face)
    {
        string[] words = order.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        List<string> lines = [order.Text];
        double size = 0;
        for (int count = 1; count <= Math.Min(order.MostLines, words.Length); count++)
        {
            List<string> tried = Balanced(words, count, face);
            double widest = tried.Max(l => WidthEm(l, face));
            double largest = Math.Min(
                Math.Min(order.LargestMm, order.Room.Width / widest),
                order.Room.Height / (CapHeight + ((count - 1) * order.Leading))
            );

            // Another line has to earn its place.
            if (largest > size * 1.08)
            {
                (size, lines) = (largest, tried);
            }
        }

        double block = size * (CapHeight + ((lines.Count - 1) * order.Leading));
        double top = order.StandsAtFoot ? order.Room.Bottom - block : order.Room.Y;
        List<TextItem> set =
        [
            .. lines.Select((line, i) => Line(line, i, order, face, size, top + (CapHeight * size) + (i * order.Leading * size))),
        ];
        return new PlacedName(set, new Box(order.Room.X, top, order.Room.Width, block));
    }

    // Large letters are set to their ink, not to the white at their sides, so that they stand on the margin.
    private static TextItem Line(string text, int number, NameOrder order, Face face, double size, double baseline)
    {
        TextItem item = Strokes.Text(text, face, 0, baseline, size, order.Ink);
        double bearing = face.LeftBearing(item.Shaped.Glyphs[0]) * size;
        double x = order.Align switch
        {
            Align.Centre => order.Room.CentreX - (item.WidthMm / 2),
            Align.Right => order.Room.Right - item.WidthMm,
            _ => order.Room.X - bearing,
        };
        return item with { XMm = x };
    }

    // The words on a number of lines so that the widest is as narrow as can be.
    private static List<string> Balanced(string[] words, int count, Face face)
    {
        List<string>? best = null;
        double least = double.PositiveInfinity;
        foreach (List<string> way in Ways(words, 0, count))
        {
            double widest = way.Max(l => WidthEm(l, face));
            if (widest < least)
            {
                (least, best) = (widest, way);
            }
        }

        return best!;
    }

    private static IEnumerable<List<string>> Ways(string[] words, int from, int lines)
    {
        if (lines == 1)
        {
            yield return [string.Join(' ', words[from..])];
            yield break;
        }

        for (int end = from + 1; end <= words.Length - lines + 1; end++)
        {
            foreach (List<string> rest in Ways(words, end, lines - 1))
            {
                yield return [string.Join(' ', words[from..end]), .. rest];
            }
        }
    }

    private static double WidthEm(string text, Face face) => Math.Max(0.01, (double)face.Shape(text).Advance / face.UnitsPerEm);
}
