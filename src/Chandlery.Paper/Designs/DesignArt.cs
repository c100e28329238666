using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs;

/// <summary>The art of a front, which runs over its edges.</summary>
/// <param name="Ground">Its ground.</param>
/// <param name="Items">What is on it, from back to front.</param>
public sealed record DesignArt(Ink Ground, IReadOnlyList<SceneItem> Items);
