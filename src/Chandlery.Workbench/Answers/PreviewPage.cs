namespace Chandlery.Workbench.Answers;

/// <summary>A page of a paper.</summary>
/// <param name="WidthMm">Width, millimetres.</param>
/// <param name="HeightMm">Height, millimetres.</param>
/// <param name="Svg">Its drawing.</param>
internal sealed record PreviewPage(double WidthMm, double HeightMm, string Svg);
