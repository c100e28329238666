using Chandlery.Core.Declared;
using Chandlery.Core.Labelled;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>
/// A strip that runs over the lid and down two sides. The law has one face for itself, the near side or the lid, whichever gives it the
/// larger text; the maker's front has the other.
/// </summary>
internal static class StripLabel
{
    /// <summary>The strip; missing where the vessel cannot carry it or no face holds the law's text.</summary>
    /// <param name="request">What to make it of.</param>
    /// <param name="asked">The strip that is asked for.</param>
    /// <param name="design">Name of the design of its front; null for none.</param>
    /// <param name="problems">Collects what is wrong with templates and data.</param>
    public static PaperOutcome Make(PaperRequest request, LabelRequest asked, string? design, Problems problems)
    {
        double width = asked.Size.Width.Value;
        if (request.Assessment.Vessel.Outer is not { } outer)
        {
            return Missing("a strip goes over the lid, and the vessel's outer size is not declared: add 'outer' to the vessel");
        }

        if (StripFaces.Of(width, asked.Size.Height.Value, outer) is not { } faces)
        {
            return Missing(
                $"a {asked} does not lie on this vessel: it must be narrower than a round or rectangular lid, and hang no lower than the vessel stands"
            );
        }

        foreach (IReadOnlyList<StatementChoice> leftOff in DesignedLabel.Reliefs(request.Assessment))
        {
            if (LabelDocument.OpenPanel(request.Assessment, request.Shop, request.Lawbook.Burning, leftOff, problems) is not { } document)
            {
                return MissingPaper.Because(problems, isDue: true);
            }

            List<(Box Face, FittedLabel Panel)> ways =
            [
                .. new[] { faces.Near, faces.Lid }
                    .Select(f => (Face: f, Panel: document.Panel(f.Width, f.Height, 1)))
                    .Where(f => f.Panel is not null)
                    .Select(f => (f.Face, f.Panel!)),
            ];
            if (ways.Count > 0)
            {
                (Box face, FittedLabel panel) = ways.MaxBy(w => w.Panel.XHeight.Value);
                Box other = face == faces.Near ? faces.Lid : faces.Near;
                IReadOnlyList<SceneItem>? art = design is null ? [] : Art(request, design, other, faces.Length, problems);
                return art is null ? MissingPaper.Because(problems, isDue: true) : Made(request, faces, (face, panel, art), leftOff);
            }
        }

        return Missing(
            $"the text does not fit one face of a {asked}: {faces.Near.Width:0.#} x {faces.Near.Height:0.#} mm on the near side, {faces.Lid.Width:0.#} x {faces.Lid.Height:0.#} mm on the lid. A wider strip, another shape of label or fewer languages would help"
        );
    }

    private static MadeLabel Made(
        PaperRequest request,
        StripFaces faces,
        (Box Face, FittedLabel Panel, IReadOnlyList<SceneItem> Art) strip,
        IReadOnlyList<StatementChoice> leftOff
    )
    {
        const double bleed = DesignedLabel.BleedMm;
        Box face = strip.Face;

        // White first, over whatever a design may have drawn there; where the strip ends the white is cut off with it.
        double below = face.Bottom >= faces.Length ? bleed : 0;
        Pen white = new Pen().Box(-bleed, face.Y, face.Width + (2 * bleed), face.Height + below);
        var page = new Scene(
            face.Width,
            faces.Length,
            [.. strip.Art, Shading.Fill(white, Ink.White), .. strip.Panel.Scene.Items.Select(i => i.Moved(face.X, face.Y))],
            [.. strip.Panel.Scene.Marks.Select(m => m.Moved(face.X, face.Y))]
        )
        {
            BleedMm = bleed,
        };
        return new MadeLabel(
            new PaperDocument(request.Assessment.Candle.Name, request.Assessment.Languages[0].Code, [page]),
            leftOff.Select(l => l.Code.Text).ToHashSet(),
            face
        );
    }

    // The front on the face that the law leaves free.
    private static IReadOnlyList<SceneItem>? Art(PaperRequest request, string design, Box face, double length, Problems problems)
    {
        DesignFacts facts = DesignFactsMaker.Make(request.Assessment, request.Brand);
        return DesignedLabel.Over(request, design, facts, new Box(0, 0, face.Width, length), face, problems);
    }

    private static MissingPaper Missing(string why) => new($"{why}.", IsDue: true, []);
}
