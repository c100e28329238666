using Chandlery.Core.Quantities;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>A page of a label that fits.</summary>
/// <param name="Scene">The page.</param>
/// <param name="XHeight">Height of a lower-case x of its text.</param>
/// <param name="Pictogram">Side of its pictograms.</param>
internal sealed record FittedPage(Scene Scene, Millimetres XHeight, Millimetres Pictogram);
