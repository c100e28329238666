using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Layout;

/// <summary>What a layout came to.</summary>
/// <param name="Items">Placed items.</param>
/// <param name="Marks">Where things with a legal size lie.</param>
/// <param name="EndMm">Lower end of everything.</param>
/// <param name="OverflowMm">By how much the widest unbreakable word was too wide; 0 when none was.</param>
internal sealed record LayoutResult(IReadOnlyList<SceneItem> Items, IReadOnlyList<Mark> Marks, double EndMm, double OverflowMm);
