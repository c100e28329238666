namespace Chandlery.Workbench.Answers;

/// <summary>The designs of fronts, drawn.</summary>
/// <param name="Designs">Each of them.</param>
internal sealed record DesignsAnswer(IReadOnlyList<DrawnDesign> Designs);
