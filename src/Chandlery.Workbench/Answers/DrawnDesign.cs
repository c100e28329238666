namespace Chandlery.Workbench.Answers;

/// <summary>A design drawn with a candle.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Page">The drawing; null where it cannot be drawn.</param>
internal sealed record DrawnDesign(string Name, PreviewPage? Page);
