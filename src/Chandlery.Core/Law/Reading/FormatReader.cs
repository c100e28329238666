using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads how labels must look.</summary>
internal static class FormatReader
{
    private static readonly NumberField Side = new("", "", "74", 0, 2000);

    public static LabelFormats Read(Fields fields)
    {
        List<LabelFormat> formats = [.. fields.Groups("formats").Select(ReadFormat)];
        if (!formats.Exists(f => f.Status == LegalStatus.Law))
        {
            fields.Problems.Add(fields.PlaceOf("formats"), "'formats' has no row that is law.", "Write one with 'status: law'.");
        }

        Fields quantity = fields.Group("quantityFigures", "{ clause: ..., bands: [...] }");
        var bands = new List<FigureBand>();
        foreach (Fields row in quantity.Groups("bands"))
        {
            bands.Add(ReadFigures(row));
            row.Done();
        }

        CheckLast(quantity, isOpen: bands is [.., { UpTo: null }]);
        var figures = new QuantityFigures(LawCodes.Citation(quantity), bands, quantity.OptionalNumber("panelShareOfSide", 0, 1) ?? 1);
        LawRows.Close(quantity);
        List<LabelSize> sizes = [.. fields.List("offeredSizesMm").Select(v => ReadSize(fields, v))];
        fields.Done();
        return new LabelFormats(formats, figures, sizes);
    }

    private static FigureBand ReadFigures(Fields row)
    {
        (FigureMeasure Measure, string Key)[] measures =
        [
            (FigureMeasure.Grams, "upToGrams"),
            (FigureMeasure.SquareInches, "upToSquareInches"),
            (FigureMeasure.SquareCentimetres, "upToSquareCentimetres"),
            (FigureMeasure.LargestMm, "upToLargestMm"),
        ];
        var height = new Millimetres(row.Number("figureMm", 0, 100, "4"));
        (FigureMeasure measure, string? key) = Array.Find(measures, m => row.Has(m.Key));
        return new FigureBand(measure, key is null ? null : row.OptionalNumber(key, 0, 1e6), height);
    }

    private static LabelFormat ReadFormat(Fields fields)
    {
        string id = fields.Text("id", "table-1.3");
        LegalStatus status = fields.Choice("status", "law", "expected") == "law" ? LegalStatus.Law : LegalStatus.Expected;
        DateOnly from = fields.Day("from");
        Citation clause = LawCodes.Citation(fields);
        double xHeight = fields.Number("xHeightMm", 0, 10, "1.2");
        List<SizeBand> bands = [.. fields.Groups("bands").Select(row => ReadBand(row, xHeight))];
        CheckLast(fields, isOpen: bands is [.., { UpTo: null }]);
        fields.OptionalText("stricter");
        var format = new LabelFormat
        {
            Id = id,
            Status = status,
            From = from,
            Clause = clause,
            Bands = bands,
            XHeightClause = LawCodes.Citation(fields, "xHeightClause"),
            LineSpacing = fields.Number("lineSpacingOfFontSize", 0, 10, "1.2"),
            LineSpacingClause = LawCodes.Citation(fields, "lineSpacingClause"),
            PanelToPictogram = fields.Number("panelToPictogram", 1, 1000, "15"),
            PanelToPictogramClause = LawCodes.Citation(fields, "panelToPictogramClause"),
        };
        fields.Done();
        return format;
    }

    // Every package has a band, the largest too.
    private static void CheckLast(Fields owner, bool isOpen)
    {
        if (!isOpen)
        {
            owner.Problems.Add(owner.PlaceOf("bands"), "The last row of 'bands' must be open.", "Write it without 'upTo...'.");
        }
    }

    private static SizeBand ReadBand(Fields row, double xHeight)
    {
        Millilitres? upTo = row.OptionalNumber("upToLitres", 0, 1e6) is { } litres ? new Millilitres(litres * 1000) : null;
        double pictogram = row.Number("pictogramMm", 0, 500, "16");
        var band = new SizeBand(
            upTo,
            ReadSize(row, row.Take("labelMm") ?? new YamlList([], row.Place)),
            row.OptionalFlag("ifPossible") ?? false,
            new Millimetres(pictogram),
            new Millimetres(row.OptionalNumber("pictogramIfPossibleMm", 0, 500) ?? pictogram),
            new Millimetres(row.OptionalNumber("xHeightMm", 0, 10) ?? xHeight)
        );
        row.Done();
        return band;
    }

    private static LabelSize ReadSize(Fields fields, YamlValue value)
    {
        if (value is YamlList { Items.Count: 2 } pair)
        {
            return new LabelSize(
                new Millimetres(fields.ReadNumber(pair.Items[0], "the width", Side)),
                new Millimetres(fields.ReadNumber(pair.Items[1], "the height", Side))
            );
        }

        fields.Problems.Add(value.Place, "A size is a pair of millimetres.", "Write [52, 74].");
        return new LabelSize(new Millimetres(1), new Millimetres(1));
    }
}
