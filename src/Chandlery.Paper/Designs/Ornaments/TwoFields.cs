using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>
/// Two flat fields in the ratio of the two main oils, with a border that leans a degree for each percent of load and passes through
/// the name, which changes its ink there; smaller oils are hems at the foot.
/// </summary>
internal sealed class TwoFields : IOrnament
{
    private const double DegreesOfPercent = 1;
    private const double HemMmOfPercent = 0.1;
    private const double LeastContrast = 4.5;

    private static readonly Ink OwnDark = Ink.Of("#1F4250") with { Process = new Cmyk(60, 20, 0, 70) };

    /// <inheritdoc/>
    public string Kind => "two-fields";

    /// <inheritdoc/>
    public IEnumerable<SceneItem> Draw(OrnamentRequest request)
    {
        Box room = request.Room;
        double beyond = request.BeyondMm;
        (Ink upper, Ink lower) = Inks(request);
        double lean = Math.Tan(Math.Min(18, request.Facts.LoadPercent * DegreesOfPercent) * Math.PI / 180);
        double border = Border(request);
        double left = border + (lean * room.Width / 2);
        double right = border - (lean * room.Width / 2);
        double slope = lean * beyond;
        Pen below = new Pen()
            .Move(room.X - beyond, left + slope)
            .Line(room.Right + beyond, right - slope)
            .Line(room.Right + beyond, room.Bottom + beyond)
            .Line(room.X - beyond, room.Bottom + beyond)
            .Close();
        Pen above = new Pen()
            .Move(room.X - beyond, left + slope)
            .Line(room.Right + beyond, right - slope)
            .Line(room.Right + beyond, room.Y - beyond)
            .Line(room.X - beyond, room.Y - beyond)
            .Close();
        yield return Shading.Fill(
            new Pen().Box(room.X - beyond, room.Y - beyond, room.Width + (2 * beyond), room.Height + (2 * beyond)),
            upper
        );
        yield return Shading.Fill(below, lower);
        double hem = room.Bottom;
        foreach (BlendPart part in request.Facts.Parts.Skip(2).Reverse())
        {
            double height = Math.Max(0.6, part.Share * 100 * HemMmOfPercent);
            double reach = hem >= room.Bottom ? beyond : 0;
            Ink ink = request.Inks.IsOneInk ? upper : part.Ink;
            yield return Shading.Fill(new Pen().Box(room.X - beyond, hem - height, room.Width + (2 * beyond), height + reach), ink);
            hem -= height + (request.Inks.IsOneInk ? 0.6 : 0);
        }

        if (request.Name is { } name)
        {
            yield return new ClipItem(above.ToString(), 0, 0, [.. name.Lines.Select(l => l with { Ink = lower })]);
            yield return new ClipItem(below.ToString(), 0, 0, [.. name.Lines.Select(l => l with { Ink = upper })]);
        }
    }

    /// <summary>The inks of the two fields, dark enough apart to read one on the other.</summary>
    public static (Ink Upper, Ink Lower) Inks(OrnamentRequest request)
    {
        if (request.Inks.IsOneInk)
        {
            return (request.Inks.Paper, request.Inks.Deep(OwnDark));
        }

        IReadOnlyList<BlendPart> parts = request.Facts.Parts;
        Ink upper = parts.Count > 0 ? parts[0].Ink.Towards(Ink.White, 0.18) : request.Inks.Light(Ink.White);
        Ink lower = parts.Count > 1 ? parts[1].Ink.Towards(OwnDark, 0.72) : request.Inks.Deep(OwnDark);
        for (int i = 0; i < 10 && Ink.Contrast(upper, lower) < LeastContrast; i++)
        {
            lower = lower.Towards(Ink.Black, 0.15);
            upper = upper.Towards(Ink.White, 0.08);
        }

        return (upper, lower);
    }

    // As high as the ratio asks, moved to the middle of the nearest line of the name.
    private static double Border(OrnamentRequest request)
    {
        IReadOnlyList<BlendPart> parts = request.Facts.Parts;
        double ratio = parts.Count switch
        {
            0 => 0.5,
            1 => 1 - Math.Clamp(request.Facts.LoadPercent / 20, 0.2, 0.8),
            _ => parts[0].Share / (parts[0].Share + parts[1].Share),
        };
        double wanted = request.Room.Y + (request.Room.Height * Math.Clamp(ratio, 0.2, 0.8));
        return request.Name is { Lines.Count: > 0 } name
            ? name.Lines.Select(l => l.BaselineMm - (l.SizeMm * l.Face.XHeight / 2)).MinBy(y => Math.Abs(y - wanted))
            : wanted;
    }
}
