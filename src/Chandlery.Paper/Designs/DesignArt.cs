using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs;

/// <summary>The art of a front, which runs over its edges.</summary>
/// <param name="Ground">Its ground.</param>
/// <param name="Items">What is on it, from back to front.</param>
public sealed record DesignArt(Ink Ground, IReadOnlyList<SceneItem> Items)
{
    /// <summary>Ground and art inside an outline and nowhere else.</summary>
    /// <param name="outline">The outline, in millimetres of the page.</param>
    /// <param name="xMm">Where the art's left edge lies.</param>
    /// <param name="yMm">Where its upper edge lies.</param>
    internal IReadOnlyList<SceneItem> Within(Pen outline, double xMm, double yMm) =>
        [Shading.Fill(outline, Ground), new ClipItem(outline.ToString(), 0, 0, [.. Items.Select(i => i.Moved(xMm, yMm))])];
}
