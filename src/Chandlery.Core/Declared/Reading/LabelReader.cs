using Chandlery.Core.Quantities;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads the form and size of a label.</summary>
internal static class LabelReader
{
    /// <summary>The label that is asked for; null when none is.</summary>
    public static LabelRequest? Read(Fields fields, GroupField field)
    {
        if (fields.OptionalGroup(field) is not { } group)
        {
            return null;
        }

        string shape = group.Has(LabelShape.Form) ? group.Choice(LabelShape.Form) : LabelShape.Form.Choices[0];
        LabelForm form = Enum.Parse<LabelForm>(shape, ignoreCase: true);
        LabelRequest request = form == LabelForm.Outline ? ReadOutline(group) : ReadSized(group, form);
        group.Done();
        return request;
    }

    /// <summary>Says so where a cut line is smaller or larger than a label can be.</summary>
    public static void CheckSize(LabelOutline outline, TextPlace place, Problems problems)
    {
        if (
            Math.Min(outline.WidthMm, outline.HeightMm) < LabelShape.ShortestMm
            || Math.Max(outline.WidthMm, outline.HeightMm) > LabelShape.LongestMm
        )
        {
            problems.Add(
                place,
                $"The outline is {Figures.Rounded(outline.WidthMm, 1)} mm wide and {Figures.Rounded(outline.HeightMm, 1)} mm high.",
                "A label's sides are between 5 and 1000 mm: look at its units."
            );
        }
    }

    private static LabelRequest ReadOutline(Fields group)
    {
        var unread = new LabelRequest(
            LabelForm.Outline,
            new LabelSize(new Millimetres(1), new Millimetres(1)),
            new Millimetres(0),
            new Millimetres(0)
        );
        if (group.Has(LabelShape.Outline) == group.Has(LabelShape.File))
        {
            group.Problems.Add(
                group.Place,
                "An outline has either corners or a file.",
                "Write 'outlineMm: [0 0, 120 0, 60 100]' or 'file: tag.svg'."
            );
        }

        if (BrandReader.ReadFile(group, LabelShape.File) is { } name)
        {
            return unread with { OutlineFile = new OutlineFile(name, group.PlaceOf(LabelShape.File)) };
        }

        if (OutlineReader.ReadCutLine(group) is not { } outline)
        {
            return unread;
        }

        CheckSize(outline, group.PlaceOf(LabelShape.Outline), group.Problems);
        return unread.Along(outline);
    }

    private static LabelRequest ReadSized(Fields group, LabelForm form)
    {
        double diameter = form is LabelForm.Circle or LabelForm.Ring ? group.Number(LabelShape.Diameter) : 0;
        double height = diameter > 0 ? diameter : group.Number(LabelShape.Height);

        // A band's length comes from the vessel.
        double width =
            diameter > 0 ? diameter
            : form == LabelForm.Band ? 1
            : group.Number(LabelShape.Width);
        double corner = form == LabelForm.Rectangle ? group.OptionalNumber(LabelShape.Corner) ?? 0 : 0;
        double hole = form == LabelForm.Ring ? group.Number(LabelShape.Hole) : 0;
        if (hole >= width || corner > Math.Min(width, height) / 2)
        {
            group.Problems.Add(group.Place, "The hole or the corner radius is larger than the label.");
        }

        if (form == LabelForm.Arch && height <= width / 2)
        {
            group.Problems.Add(
                group.Place,
                "An arch is higher than half its width: its upper end is a half circle.",
                "Write a larger 'heightMm', or a smaller 'widthMm'."
            );
        }

        return new LabelRequest(
            form,
            new LabelSize(new Millimetres(width), new Millimetres(height)),
            new Millimetres(corner),
            new Millimetres(hole)
        );
    }
}
