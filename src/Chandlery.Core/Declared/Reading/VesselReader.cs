using Chandlery.Core.Quantities;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads vessels and sizes.</summary>
internal static class VesselReader
{
    /// <summary>A vessel.</summary>
    public static Vessel Read(Fields fields, string id)
    {
        string name = fields.Text(VesselShape.Name);
        string material = fields.Text(VesselShape.Material);
        var brimful = new Millilitres(fields.Number(VesselShape.Brimful));
        Millilitres? fill = fields.OptionalNumber(VesselShape.Fill) is { } f ? new Millilitres(f) : null;
        if (fill is { } line && line.Value > brimful.Value)
        {
            fields.Problems.Add(fields.PlaceOf(VesselShape.Fill), $"The fill of {line} is more than the {brimful} to the brim.");
        }

        return new Vessel
        {
            Id = id,
            Place = fields.Place,
            Name = name,
            Material = material,
            Brimful = brimful,
            Fill = fill,
            Pieces = (int)(fields.OptionalNumber(VesselShape.Pieces) ?? 1),
            Inner = ReadSize(fields, VesselShape.Inner),
            Outer = ReadSize(fields, VesselShape.Outer),
            IsChildResistant = fields.OptionalFlag(VesselShape.ChildResistant) ?? false,
            HasTactileWarning = fields.OptionalFlag(VesselShape.TactileWarning) ?? false,
        };
    }

    /// <summary>A size; null when none is given.</summary>
    public static VesselSize? ReadSize(Fields fields, GroupField field)
    {
        Fields? size = fields.OptionalGroup(field);
        if (size is null)
        {
            return null;
        }

        OutlineSection? outline = field == VesselShape.Inner ? OutlineReader.Read(size) : null;
        Millimetres? diameter = Length(size, VesselShape.Diameter);
        Millimetres? length = Length(size, VesselShape.Length);
        Millimetres? width = Length(size, VesselShape.Width);
        var height = new Millimetres(size.Number(VesselShape.Height));
        bool isOutline = size.Has(VesselShape.Outline);
        if (
            isOutline
                ? diameter is not null || length is not null || width is not null
                : (diameter is null) == (length is null) || (length is null) != (width is null)
        )
        {
            size.Problems.Add(
                size.Place,
                $"'{field.Key}' must have either 'diameterMm' or both 'lengthMm' and 'widthMm'{(field == VesselShape.Inner ? ", or 'outlineMm'" : "")}."
            );
        }

        size.Done();
        CrossSection section =
            outline is not null ? outline
            : length is { } one && width is { } other ? new RectangularSection(one, other)
            : new RoundSection(diameter ?? new Millimetres(1));
        return new VesselSize(section, height);
    }

    private static Millimetres? Length(Fields fields, NumberField field) =>
        fields.OptionalNumber(field) is { } value ? new Millimetres(value) : null;
}
