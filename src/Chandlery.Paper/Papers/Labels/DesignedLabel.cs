using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Labelled;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Shapes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>
/// A label with a front: the art belongs to the maker, the legal panel to the law. The panel is laid over the art last, white and
/// whole, so that no design can cover, tint or cut it.
/// </summary>
public sealed class DesignedLabel
{
    /// <summary>How far art runs over the edges that are cut (common practice of printers, no source).</summary>
    public const double BleedMm = 3;

    /// <summary>The largest corner radius whose arc stays clear of the panel's text at its usual margin.</summary>
    public const double LargestCornerMm = 5;

    // The front is about as wide as the panel is high, and never so narrow that its name is lost.
    private const double ArtOfHeight = 0.86;
    private const double LeastArtMm = 34;
    private const double LargestArtMm = 110;
    private const double StepMm = 2;
    private const double LargestShare = 0.46;
    private const double LongestPanelMm = 260;

    // The upper part of an arch is narrower than its foot, so that the front may take more of its height.
    private const double LargestCutShare = 0.54;
    private const double OverlapMm = 5;
    private const double EdgeMm = 1;

    // By how much a front is lowered at a time until its words clear the cut.
    private const double LoweredMm = 4;
    private const double MostLowered = 0.6;

    // Words on a front keep this from a cut that is no straight edge (common practice of printers, no source).
    private const double LeastFromCutMm = 2;

    // Text a little larger than the least reads better and still leaves the front its room.
    private const double WantedOfLeast = 1.12;

    private readonly PaperRequest request;
    private readonly string design;
    private readonly LabelDocument document;
    private readonly Problems problems;
    private readonly DesignFacts facts;

    private DesignedLabel(PaperRequest request, string design, LabelDocument document, Problems problems)
    {
        this.request = request;
        this.design = design;
        this.document = document;
        this.problems = problems;
        facts = DesignFactsMaker.Make(request.Assessment, request.Brand);
    }

    /// <summary>The label; null where front and law find no room together, and where there are problems, which are collected.</summary>
    /// <param name="request">What to make it of.</param>
    /// <param name="design">Name of the design.</param>
    /// <param name="form">How front and law come together.</param>
    /// <param name="problems">Collects what is wrong with templates and data.</param>
    public static MadeLabel? Make(PaperRequest request, string design, DesignForm form, Problems problems)
    {
        foreach (IReadOnlyList<StatementChoice> leftOff in Reliefs(request.Assessment))
        {
            if (LabelDocument.OpenPanel(request.Assessment, request.Shop, request.Lawbook.Burning, leftOff, problems) is not { } document)
            {
                return null;
            }

            var label = new DesignedLabel(request, design, document, problems);
            MadeLabel? made = form switch
            {
                DesignForm.Wrap => label.Wrap(leftOff),
                DesignForm.Pair => label.Pair(leftOff),
                _ => label.One(leftOff),
            };
            if (made is not null || !problems.None)
            {
                return problems.None ? made : null;
            }
        }

        return null;
    }

    // Small-package relief only where the text does not fit without it.
    internal static IEnumerable<IReadOnlyList<StatementChoice>> Reliefs(Assessment a) =>
        a.SmallPackageRelief.Count == 0
            ?
            [
                [],
            ]
            :
            [
                [],
                a.SmallPackageRelief,
            ];

    private MadeLabel? One(IReadOnlyList<StatementChoice> leftOff)
    {
        if (request.Assessment.Candle.Label is { Form: LabelForm.Rectangle } asked)
        {
            return OneOf(asked.Size.Width.Value, asked.Size.Height.Value) is { } found ? Beside(found, leftOff) : null;
        }

        if (request.Assessment.Candle.Label is { Form: LabelForm.Arch or LabelForm.Outline } cut)
        {
            return Parted(new LabelShape(cut, ""), leftOff);
        }

        Vessel vessel = request.Assessment.Vessel;
        double girth = vessel.Outer is { } outer ? outer.Section.Perimeter.Value : double.PositiveInfinity;
        List<FrontAndLaw> ways = [];
        foreach (double height in Heights())
        {
            double art = Math.Clamp(height * ArtOfHeight, LeastArtMm, LargestArtMm);
            if (NarrowestPanel(height, girth - art) is { } panel)
            {
                ways.Add(FrontAndLaw.Beside(art, panel));
            }
        }

        return ways.Count == 0 ? null : Beside(ways.MinBy(w => w.AreaMm2)!, leftOff);
    }

    // A given size: the largest front that leaves the law its room, with text above the least where that is possible; beside the law
    // on a wide label, above it on a tall one.
    private FrontAndLaw? OneOf(double width, double height)
    {
        foreach (double wanted in new[] { WantedOfLeast, 1 })
        {
            foreach (bool above in height > width ? new[] { true, false } : [false, true])
            {
                double along = above ? height : width;
                double across = above ? width : height;
                double largest = Math.Min(Math.Min(along * LargestShare, across * 1.15), LargestArtMm);
                for (double art = largest; art >= Math.Min(LeastArtMm, across * 0.6); art -= StepMm)
                {
                    FittedLabel? panel = above ? document.Panel(width, height - art, wanted) : document.Panel(width - art, height, wanted);
                    if (panel is not null)
                    {
                        return above ? FrontAndLaw.Above(art, panel) : FrontAndLaw.Beside(art, panel);
                    }
                }
            }
        }

        return null;
    }

    // An arch or outline: the front in its upper part, which is the pointed one, the law below from edge to edge; the largest front
    // that leaves the law its room.
    private MadeLabel? Parted(LabelShape whole, IReadOnlyList<StatementChoice> leftOff)
    {
        double width = whole.WidthMm;
        double height = whole.HeightMm;
        double largest = Math.Min(Math.Min(height * LargestCutShare, width * 1.15), LargestArtMm);
        foreach (double wanted in new[] { WantedOfLeast, 1 })
        {
            for (double art = largest; art >= Math.Min(LeastArtMm, width * 0.6); art -= StepMm)
            {
                if (
                    whole.Between(0, art) is { } above
                    && whole.Between(art, height) is { } below
                    && document.Panel(below, wanted) is { } panel
                    && FrontOn(above, new Box(0, 0, width, art)) is { } front
                )
                {
                    var law = new Box(0, art, width, height - art);
                    IReadOnlyList<Mark> marks = [.. panel.Scene.Marks.Select(m => m.Moved(0, art))];
                    return Made([Page(width, height, [.. front, .. LawOn(panel, law, BleedMm)], marks)], leftOff, law);
                }
            }
        }

        return null;
    }

    private MadeLabel? Pair(IReadOnlyList<StatementChoice> leftOff)
    {
        FittedLabel? back = null;
        if (request.Assessment.Candle.Label is { Form: LabelForm.Rectangle } asked)
        {
            back = document.Panel(asked.Size.Width.Value, asked.Size.Height.Value, 1);
        }
        else if (request.Assessment.Candle.Label is { Form: LabelForm.Arch or LabelForm.Outline } cut)
        {
            back = document.InShape(new LabelShape(cut, ""));
        }
        else
        {
            foreach (double height in Heights())
            {
                if (NarrowestPanel(height, LongestPanelMm) is { } panel && (back is null || panel.Shape.AreaMm2 < back.Shape.AreaMm2))
                {
                    back = panel;
                }
            }
        }

        if (back is null)
        {
            return null;
        }

        var whole = new Box(0, 0, back.Shape.WidthMm, back.Shape.HeightMm);
        if (FrontOn(back.Shape, whole) is not { } drawn)
        {
            return null;
        }

        Scene front = Page(whole.Width, whole.Height, drawn);
        Scene law = Page(whole.Width, whole.Height, LawOn(back, whole, BleedMm), back.Scene.Marks);
        return Made([front, law], leftOff, whole);
    }

    // A front fills its label. Where the cut would come too near its words, they keep to a part of it: first further down at the
    // whole width, where an arch or a roof has widened; then in the largest box inside. The picture goes on all over the label.
    private IReadOnlyList<SceneItem>? FrontOn(LabelShape shape, Box whole)
    {
        if (ArtOver(whole, whole) is not { } art)
        {
            return null;
        }

        if (shape.IsRectangular || Clears(art))
        {
            return art;
        }

        for (double top = LoweredMm; top <= whole.Height * MostLowered; top += LoweredMm)
        {
            if (ArtOver(whole, new Box(0, top, whole.Width, whole.Height - top)) is { } lowered && Clears(lowered))
            {
                return lowered;
            }
        }

        (double x, double y, double width, double height) = shape.LargestBox();
        return ArtOver(whole, new Box(x, y, width, height));

        bool Clears(IReadOnlyList<SceneItem> items) =>
            items.SelectMany(i => i.All).OfType<TextItem>().All(t => shape.Clears(t, LeastFromCutMm));
    }

    private IReadOnlyList<SceneItem>? ArtOver(Box whole, Box room) => Over(request, design, facts, whole, room, problems);

    /// <summary>A front that is set in a part of a page, its picture going on all over the rest; null when there are problems.</summary>
    /// <param name="request">What to make it of.</param>
    /// <param name="design">Name of the design.</param>
    /// <param name="facts">The candle.</param>
    /// <param name="whole">The page.</param>
    /// <param name="room">The part.</param>
    /// <param name="problems">Collects what is wrong with the templates.</param>
    internal static IReadOnlyList<SceneItem>? Over(
        PaperRequest request,
        string design,
        DesignFacts facts,
        Box whole,
        Box room,
        Problems problems
    )
    {
        double past = BleedMm + Math.Max(Math.Max(room.X, whole.Right - room.Right), Math.Max(room.Y, whole.Bottom - room.Bottom));
        Box page = whole.Grown(BleedMm);
        return
            request.Shop.Designs.Draw(design, DesignPiece.Front, facts, request.Brand, (room.Width, room.Height), problems, past) is { } art
            ? art.Within(new Pen().Box(page.X, page.Y, page.Width, page.Height), room.X, room.Y)
            : null;
    }

    private MadeLabel? Wrap(IReadOnlyList<StatementChoice> leftOff)
    {
        if (request.Assessment.Vessel.Outer is not { } outer)
        {
            return null;
        }

        double width = outer.Section.Perimeter.Value + OverlapMm;
        double height = request.Assessment.Candle.Label is { Form: LabelForm.Band } asked
            ? asked.Size.Height.Value
            : Heights().Where(h => h <= outer.Height.Value - (2 * EdgeMm)).DefaultIfEmpty(outer.Height.Value - (2 * EdgeMm)).Max();
        double art = Math.Clamp(height * ArtOfHeight, LeastArtMm, LargestArtMm);
        if (NarrowestPanel(height, width - art - OverlapMm) is not { } panel)
        {
            return null;
        }

        // What is left of the band shows the front once more, so that one is seen from every side; a narrow rest widens it.
        double rest = width - art - panel.Shape.WidthMm;
        bool repeats = rest >= art;
        double first = repeats ? art : art + rest;
        if (Art(DesignPiece.Front, first, height) is not { } front)
        {
            return null;
        }

        var items = new List<SceneItem>(Zone(front, new Box(0, 0, first, height), true, false));
        var panelBox = new Box(first, 0, panel.Shape.WidthMm, height);
        if (repeats)
        {
            double left = panelBox.Right;
            if (Art(height * 1.4 < width - left ? DesignPiece.Strip : DesignPiece.Front, width - left, height) is not { } again)
            {
                return null;
            }

            items.AddRange(Zone(again, new Box(left, 0, width - left, height), false, true));
        }

        items.AddRange(LawOn(panel, panelBox, repeats ? 0 : BleedMm));
        return Made([Page(width, height, items, [.. panel.Scene.Marks.Select(m => m.Moved(first, 0))])], leftOff, panelBox);
    }

    private MadeLabel? Beside(FrontAndLaw way, IReadOnlyList<StatementChoice> leftOff)
    {
        if (Art(DesignPiece.Front, way.Front.Width, way.Front.Height) is not { } art)
        {
            return null;
        }

        // The panel is laid over the art, so that a front above it may run over its lower edge too.
        List<SceneItem> items = [.. Zone(art, way.Front, true, way.Front.Right >= way.WidthMm), .. LawOn(way.Panel, way.Law, BleedMm)];
        IReadOnlyList<Mark> marks = [.. way.Panel.Scene.Marks.Select(m => m.Moved(way.Law.X, way.Law.Y))];
        return Made([Page(way.WidthMm, way.HeightMm, items, marks)], leftOff, way.Law);
    }

    private MadeLabel Made(IReadOnlyList<Scene> pages, IReadOnlyList<StatementChoice> leftOff, Box panel) =>
        new(
            new PaperDocument(request.Assessment.Candle.Name, request.Assessment.Languages[0].Code, pages),
            leftOff.Select(l => l.Code.Text).ToHashSet(),
            panel
        );

    private DesignArt? Art(DesignPiece piece, double width, double height) =>
        request.Shop.Designs.Draw(design, piece, facts, request.Brand, (width, height), problems);

    // The heights of the sizes that the edition offers and the vessel can carry, or the vessel's own where none fits.
    private List<double> Heights()
    {
        double most = request.Assessment.Vessel.Outer is { } outer ? outer.Height.Value - (2 * EdgeMm) : double.PositiveInfinity;
        List<double> heights =
        [
            .. request
                .Assessment.Edition.Formats.OfferedSizes.SelectMany(s => new[] { s.Width.Value, s.Height.Value })
                .Append(document.Band.Label.Width.Value)
                .Append(document.Band.Label.Height.Value)
                .Where(h => h <= most)
                .Distinct()
                .Order(),
        ];
        return heights.Count > 0 ? heights
            : double.IsFinite(most) && most > 0 ? [most]
            : [];
    }

    private FittedLabel? NarrowestPanel(double height, double most)
    {
        foreach (double wanted in new[] { WantedOfLeast, 1 })
        {
            for (double width = Math.Ceiling(LeastWidth(height)); width <= Math.Min(most, LongestPanelMm); width += StepMm)
            {
                if (document.Panel(width, height, wanted) is { } panel)
                {
                    return panel;
                }
            }
        }

        return null;
    }

    // The law gives two sides; the panel's height covers one of them.
    private double LeastWidth(double height)
    {
        if (document.IsTooLow)
        {
            return LeastArtMm;
        }

        double shorter = Math.Min(document.Band.Label.Width.Value, document.Band.Label.Height.Value);
        double longer = Math.Max(document.Band.Label.Width.Value, document.Band.Label.Height.Value);
        return height >= longer ? shorter : longer;
    }

    private Scene Page(double width, double height, IEnumerable<SceneItem> items, IReadOnlyList<Mark>? marks = null) =>
        new(width, height, [.. items], marks ?? []) { BleedMm = BleedMm, CutPath = Rounded() };

    // Where the asked label is no plain rectangle, it is cut along its outline.
    private string? Rounded() =>
        request.Assessment.Candle.Label is { Form: LabelForm.Rectangle, Corner.Value: > 0 } or { Form: LabelForm.Arch or LabelForm.Outline }
            ? new LabelShape(request.Assessment.Candle.Label, "").Outline()
            : null;

    // Art, cut off where its zone ends; it runs over edges that are cut, and not into the panel.
    private static IEnumerable<SceneItem> Zone(DesignArt art, Box zone, bool bleedsLeft, bool bleedsRight)
    {
        double left = bleedsLeft ? BleedMm : 0;
        double right = bleedsRight ? BleedMm : 0;
        var area = new Box(zone.X - left, zone.Y - BleedMm, zone.Width + left + right, zone.Height + (2 * BleedMm));
        return art.Within(new Pen().Box(area.X, area.Y, area.Width, area.Height), zone.X, zone.Y);
    }

    // White first, over whatever a design may have drawn there.
    private static IEnumerable<SceneItem> LawOn(FittedLabel panel, Box box, double bleedRight) =>
        [
            Shading.Fill(
                box.Y > 0
                    ? new Pen().Box(box.X - BleedMm, box.Y, box.Width + BleedMm + bleedRight, box.Height + BleedMm)
                    : new Pen().Box(box.X, box.Y - BleedMm, box.Width + bleedRight, box.Height + (2 * BleedMm)),
                Ink.White
            ),
            .. panel.Scene.Items.Select(i => i.Moved(box.X, box.Y)),
        ];
}
