using Chandlery.Paper.Layout;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>A way to set a label's text: in one flow that follows the shape, or in columns.</summary>
/// <param name="XHeightMm">Height of a lower-case x.</param>
/// <param name="PictogramMm">Side of the pictograms' squares.</param>
/// <param name="Plan">How blocks are dealt out; null for one flow.</param>
/// <param name="Unevenness">How unlike columns are, and how much of the height is left over.</param>
internal sealed record Setting(double XHeightMm, double PictogramMm, ColumnPlan? Plan, double Unevenness);
