using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Blocks;

/// <summary>A page that is drawn elsewhere, such as a label or a picture: as large as it is, or as finds room. Its lines stay lines.</summary>
/// <param name="Name">Which one: the paper's maker has it by this name, and one that there is not leaves no room.</param>
/// <param name="About">What it shows, in words.</param>
/// <param name="TallestMm">How tall it may be.</param>
internal sealed record Depiction(string Name, string About, double TallestMm) : Block
{
    internal static readonly BlockKind Kind = new(
        "drawing",
        (element, reading) =>
            new Depiction(
                (string?)element.Attribute("name") ?? "",
                (string?)element.Attribute("about") ?? "",
                reading.Number(element, "tallest", UsuallyTallestMm)
            )
    );

    private const double UsuallyTallestMm = 70;
    private const double AboveMm = 1;
    private const double GapMm = 2;
    private const double EdgeMm = 0.15;

    /// <summary>The page that is drawn; null for none.</summary>
    public Scene? Shown { get; init; }

    /// <summary>A document with the drawings that it names.</summary>
    public static MarkupDocument In(MarkupDocument document, IReadOnlyDictionary<string, Scene> drawings) =>
        document with
        {
            Blocks = [.. document.Blocks.Select(b => b is Depiction d ? d with { Shown = drawings.GetValueOrDefault(d.Name) } : b)],
        };

    /// <inheritdoc/>
    internal override void Lay(Flow flow)
    {
        if (Shown is null || flow.Region.Edges(flow.Y, flow.Y) is not { } row)
        {
            return;
        }

        double scale = Math.Min(1, Math.Min(TallestMm / Shown.HeightMm, (row.Right - row.Left) / Shown.WidthMm));
        (double width, double height) = (Shown.WidthMm * scale, Shown.HeightMm * scale);
        flow.Y += AboveMm;
        flow.FindRoom(width, height);
        if (flow.Region.Edges(flow.Y, flow.Y + height) is { } free)
        {
            double top = flow.Y;
            flow.Place(
                () => new TaggedItem(TagRole.Figure, [.. Draw(Shown, free.Left, top, scale)]) { Alternative = About },
                new Mark("drawing", free.Left, top, width, height)
            );
        }
        else
        {
            flow.Overflows(height);
        }

        flow.Y += height + GapMm;
    }

    // What runs over the edge is cut off as it is on paper, and the edge is drawn.
    private static IEnumerable<SceneItem> Draw(Scene shown, double left, double top, double scale)
    {
        string edge = shown.CutPath ?? Strokes.BoxPath(shown.WidthMm, shown.HeightMm);
        yield return new ClipItem(edge, left, top, [.. shown.Items.SelectMany(Plain).Select(i => i.Scaled(scale).Moved(left, top))])
        {
            ScaleMm = scale,
        };
        yield return new PathItem(edge, left, top, scale, null, Ink.Grey, EdgeMm / scale);
    }

    // It is one picture: its parts are not read out once more.
    private static IEnumerable<SceneItem> Plain(SceneItem item) =>
        item switch
        {
            TaggedItem tagged => tagged.Items.SelectMany(Plain),
            ClipItem clip => [clip with { Items = [.. clip.Items.SelectMany(Plain)] }],
            _ => [item],
        };
}
