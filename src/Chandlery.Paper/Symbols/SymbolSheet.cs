using Chandlery.Paper.Drawing;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Symbols;

/// <summary>The hazard pictograms and burn-safety symbols by name.</summary>
/// <param name="Symbols">Layers by name, from back to front.</param>
public sealed record SymbolSheet(IReadOnlyDictionary<SymbolName, IReadOnlyList<SymbolLayer>> Symbols)
{
    /// <summary>Units along the side of a symbol's square.</summary>
    public const double Units = 100;

    /// <summary>Reads <c>symbols.yaml</c>.</summary>
    public static SymbolSheet Read(IReadOnlyDictionary<string, string> dataFiles, Problems problems)
    {
        const string file = "symbols.yaml";
        var symbols = new Dictionary<SymbolName, IReadOnlyList<SymbolLayer>>();
        if (YamlText.Read(dataFiles, file, "data/" + file, problems) is not { } map)
        {
            return new SymbolSheet(symbols);
        }

        var fields = new Fields(map, problems);
        foreach (Fields row in fields.Groups("symbols"))
        {
            string text = row.Text("name", "GHS07");
            row.OptionalText("about");
            List<SymbolLayer> layers = [.. row.Groups("layers").Select(ReadLayer)];
            if (SymbolName.TryParse(text) is not { } name)
            {
                row.Problems.Add(
                    row.PlaceOf("name"),
                    $"'{text}' is no name of a symbol.",
                    Near(text, "Write a pictogram's code, such as GHS07, or a word, such as noLiquid.")
                );
            }
            else if (!symbols.TryAdd(name, layers))
            {
                row.Problems.Add(row.PlaceOf("name"), $"The symbol '{text}' stands here twice.");
            }

            row.Done();
        }

        foreach (SymbolName lacking in SymbolName.Needed.Where(n => !symbols.ContainsKey(n)))
        {
            string near = Suggestion.Nearest(lacking, symbols.Keys.Except(SymbolName.Needed).Select(n => n.Text)) is { } guess
                ? $"Is it what stands there as '{guess}'?"
                : "Draw it.";
            problems.Add(fields.PlaceOf("symbols"), $"The symbol '{lacking}', which papers need, is not there.", near);
        }

        fields.Done();
        return new SymbolSheet(symbols);
    }

    /// <summary>Whether there is a symbol of that name.</summary>
    public bool Has(string name) => SymbolName.TryParse(name) is { } known && Symbols.ContainsKey(known);

    /// <summary>The symbol's layers placed on a page.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="xMm">Left of its square.</param>
    /// <param name="yMm">Top of its square.</param>
    /// <param name="sideMm">Side of its square.</param>
    /// <exception cref="KeyNotFoundException">There is no such symbol.</exception>
    public IEnumerable<SceneItem> Place(string name, double xMm, double yMm, double sideMm) =>
        (SymbolName.TryParse(name) is { } known ? Symbols[known] : throw new KeyNotFoundException($"There is no symbol '{name}'.")).Select(
            l => new PathItem(l.Path, xMm, yMm, sideMm / Units, l.Fill, l.Stroke, l.WidthUnits)
        );

    private static string Near(string text, string otherwise) =>
        Suggestion.Nearest(text, SymbolName.Needed.Select(n => n.Text)) is { } guess ? $"Did you mean '{guess}'?" : otherwise;

    private static SymbolLayer ReadLayer(Fields row)
    {
        string path = row.Text("path", "M0 0 L100 100");
        Ink? fill = row.Has("fill") ? ReadInk(row, "fill") : null;
        Ink? stroke = row.Has("stroke") ? ReadInk(row, "stroke") : null;
        double width = row.OptionalNumber("width", 0, 100) ?? 1;
        row.Done();
        try
        {
            SkiaPaths.Of(path);
        }
        catch (FormatException)
        {
            row.Problems.Add(row.PlaceOf("path"), "This is not SVG path data.");
        }

        return new SymbolLayer(path, fill, stroke, width);
    }

    private static Ink ReadInk(Fields row, string key) =>
        row.Choice(key, "black", "white", "red", "grey") switch
        {
            "black" => Ink.Black,
            "white" => Ink.White,
            "red" => Ink.SignalRed,
            _ => Ink.Grey,
        };
}
