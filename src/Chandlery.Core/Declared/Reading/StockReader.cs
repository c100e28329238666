using Chandlery.Core.Quantities;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads label stocks.</summary>
public static class StockReader
{
    /// <summary>Reads the text of a stock's file; null when there are problems.</summary>
    public static Stock? Read(string text, string file, string id, Problems problems)
    {
        var own = new Problems();
        Stock? stock = YamlText.Read(text, file, own) is { } map ? Read(new Fields(map, own), id) : null;
        problems.AddRange(own.Found);
        return own.None ? stock : null;
    }

    private static Stock Read(Fields fields, string id)
    {
        fields.Choice(StockShape.Declares);
        string name = fields.Text(StockShape.Name);
        LabelRequest label = LabelReader.Read(fields, StockShape.Label) ?? Missing(fields);
        var bleed = new Millimetres(fields.OptionalNumber(StockShape.Bleed) ?? 0);
        Fields? sheet = fields.OptionalGroup(StockShape.Sheet);
        Fields? roll = fields.OptionalGroup(StockShape.Roll);
        if ((sheet is null) == (roll is null))
        {
            fields.Problems.Add(
                fields.Place,
                "A stock is either a sheet or a roll.",
                "Write 'sheet:' with its grid, or 'roll: { dotsPerInch: 203 }'."
            );
        }

        double? dots = roll?.Number(StockShape.DotsPerInch);
        roll?.Done();
        SheetGrid? grid = sheet is null ? null : ReadGrid(sheet, label);
        fields.Done();
        return new Stock(id, fields.Place, name, label, bleed, grid, dots);
    }

    private static SheetGrid ReadGrid(Fields fields, LabelRequest label)
    {
        Millimetres Length(NumberField field) => new(fields.Number(field));
        var grid = new SheetGrid(
            new LabelSize(Length(StockShape.PageWidth), Length(StockShape.PageHeight)),
            (int)fields.Number(StockShape.Columns),
            (int)fields.Number(StockShape.Rows),
            Length(StockShape.Left),
            Length(StockShape.Top),
            Length(StockShape.PitchX),
            Length(StockShape.PitchY)
        );
        fields.Done();
        CheckGrid(grid, label, fields.Place, fields.Problems);
        return grid;
    }

    /// <summary>Says so where the labels of a grid run off the page or overlap.</summary>
    internal static void CheckGrid(SheetGrid grid, LabelRequest label, TextPlace place, Problems problems)
    {
        double right = grid.Left.Value + ((grid.Columns - 1) * grid.PitchX.Value) + label.Size.Width.Value;
        double bottom = grid.Top.Value + ((grid.Rows - 1) * grid.PitchY.Value) + label.Size.Height.Value;
        if (right > grid.Page.Width.Value + 0.01 || bottom > grid.Page.Height.Value + 0.01)
        {
            problems.Add(
                place,
                $"The labels run off the page: they end at {Figures.Plain(right)} x {Figures.Plain(bottom)} mm on a page of {grid.Page}.",
                "Measure margins and pitch again."
            );
        }

        if (
            (grid.Columns > 1 && grid.PitchX.Value < label.Size.Width.Value)
            || (grid.Rows > 1 && grid.PitchY.Value < label.Size.Height.Value)
        )
        {
            problems.Add(place, "The labels overlap: the pitch is smaller than the label.");
        }
    }

    private static LabelRequest Missing(Fields fields)
    {
        fields.Lacks(StockShape.Label, "Write 'label: { widthMm: 99, heightMm: 67.5 }', or 'label: { shape: circle, diameterMm: 60 }'.");
        return new LabelRequest(
            LabelForm.Rectangle,
            new LabelSize(new Millimetres(1), new Millimetres(1)),
            new Millimetres(0),
            new Millimetres(0)
        );
    }
}
