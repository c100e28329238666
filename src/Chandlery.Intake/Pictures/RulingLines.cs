namespace Chandlery.Intake.Pictures;

/// <summary>The lines that are ruled on a picture.</summary>
/// <param name="Level">Lines from left to right.</param>
/// <param name="Upright">Lines from top to bottom.</param>
internal sealed record RulingLines(IReadOnlyList<PixelBox> Level, IReadOnlyList<PixelBox> Upright)
{
    private const double ShortestLevelMm = 10;
    private const double ShortestUprightMm = 5;
    private const double ThickestMm = 1.2;
    private const double WidestBreakMm = 0.17;
    private const double LeastCovered = 0.93;
    private const double MostBeside = 0.35;
    private const double HaloMm = 0.17;

    /// <summary>The lines of a picture that is not askew.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="ink">Darker shades are ink.</param>
    /// <param name="pixelsPerMm">Its resolution.</param>
    public static RulingLines Of(GreyPicture picture, byte ink, double pixelsPerMm)
    {
        int thickest = (int)Math.Ceiling(ThickestMm * pixelsPerMm);
        int widestBreak = (int)Math.Ceiling(WidestBreakMm * pixelsPerMm);
        IEnumerable<(int Across, int From, int To)> level = Runs(
            picture.Height,
            picture.Width,
            (across, along) => picture[along, across] < ink,
            (int)(ShortestLevelMm * pixelsPerMm),
            widestBreak
        );
        IEnumerable<(int Across, int From, int To)> upright = Runs(
            picture.Width,
            picture.Height,
            (across, along) => picture[across, along] < ink,
            (int)(ShortestUprightMm * pixelsPerMm),
            widestBreak
        );
        int halo = (int)Math.Ceiling(HaloMm * pixelsPerMm);
        return new RulingLines(
            [
                .. Joined(level, thickest)
                    .Select(l => new PixelBox(l.From, l.First, l.To, l.Last + 1))
                    .Where(l => IsFree(picture, ink, l, 0, halo)),
            ],
            [
                .. Joined(upright, thickest)
                    .Select(l => new PixelBox(l.First, l.From, l.Last + 1, l.To))
                    .Where(l => IsFree(picture, ink, l, halo, 0)),
            ]
        );
    }

    /// <summary>Takes the lines off the picture; a stroke that goes on at both sides of a line stays.</summary>
    public void Erase(GreyPicture picture, byte ink, double pixelsPerMm)
    {
        int halo = (int)Math.Ceiling(HaloMm * pixelsPerMm);
        bool IsInk(int x, int y) => x >= 0 && y >= 0 && x < picture.Width && y < picture.Height && picture[x, y] < ink;
        foreach (PixelBox line in Level)
        {
            for (int x = line.Left; x < line.Right; x++)
            {
                if (!IsInk(x, line.Top - halo - 1) || !IsInk(x, line.Bottom + halo))
                {
                    picture.Clear(Inside(picture, new PixelBox(x, line.Top - halo, x + 1, line.Bottom + halo)));
                }
            }
        }

        foreach (PixelBox line in Upright)
        {
            for (int y = line.Top; y < line.Bottom; y++)
            {
                if (!IsInk(line.Left - halo - 1, y) || !IsInk(line.Right + halo, y))
                {
                    picture.Clear(Inside(picture, new PixelBox(line.Left - halo, y, line.Right + halo, y + 1)));
                }
            }
        }
    }

    // The tops of letters may stand as close as a line's breaks, but strokes go on from them; beside a line there is paper.
    private static bool IsFree(GreyPicture picture, byte ink, PixelBox line, int across, int down)
    {
        (int width, int height) = across > 0 ? (1, line.Height) : (line.Width, 1);
        bool IsPaper(int left, int top) =>
            picture.CountDarker(Inside(picture, new PixelBox(left, top, left + width, top + height)), ink) < MostBeside * width * height;
        return across > 0
            ? IsPaper(line.Left - across - 1, line.Top) && IsPaper(line.Right + across, line.Top)
            : IsPaper(line.Left, line.Top - down - 1) && IsPaper(line.Left, line.Bottom + down);
    }

    private static PixelBox Inside(GreyPicture picture, PixelBox box) =>
        new(
            Math.Clamp(box.Left, 0, picture.Width),
            Math.Clamp(box.Top, 0, picture.Height),
            Math.Clamp(box.Right, 0, picture.Width),
            Math.Clamp(box.Bottom, 0, picture.Height)
        );

    // Stretches of ink that are long enough, in each row or column; a short break does not end one.
    private static IEnumerable<(int Across, int From, int To)> Runs(
        int rows,
        int length,
        Func<int, int, bool> isInk,
        int shortest,
        int widestBreak
    )
    {
        for (int row = 0; row < rows; row++)
        {
            int start = -1;
            int last = -1;
            int count = 0;
            for (int at = 0; at <= length; at++)
            {
                if (at < length && isInk(row, at))
                {
                    count = start < 0 ? 1 : count + 1;
                    start = start < 0 ? at : start;
                    last = at;
                }
                else if (start >= 0 && (at == length || at - last > widestBreak))
                {
                    int run = last + 1 - start;
                    if (run >= shortest && count >= LeastCovered * run)
                    {
                        yield return (row, start, last + 1);
                    }

                    start = -1;
                }
            }
        }
    }

    // Stretches that lie against each other are one line; what is thicker than a line is a dark ground.
    private static IEnumerable<(int First, int Last, int From, int To)> Joined(
        IEnumerable<(int Across, int From, int To)> runs,
        int thickest
    )
    {
        var lines = new List<(int First, int Last, int From, int To)>();
        foreach ((int across, int from, int to) in runs)
        {
            int home = lines.FindLastIndex(l => l.Last >= across - 2 && l.From < to && from < l.To);
            if (home < 0)
            {
                lines.Add((across, across, from, to));
            }
            else
            {
                lines[home] = (lines[home].First, across, Math.Min(lines[home].From, from), Math.Max(lines[home].To, to));
            }
        }

        return lines.Where(l => l.Last - l.First < thickest);
    }
}
