using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Symbols;

/// <summary>A layer of a symbol, on a square of 100 units.</summary>
/// <param name="Path">SVG path data.</param>
/// <param name="Fill">Fill colour, or null.</param>
/// <param name="Stroke">Line colour, or null.</param>
/// <param name="WidthUnits">Line width.</param>
public sealed record SymbolLayer(string Path, Ink? Fill, Ink? Stroke, double WidthUnits);
