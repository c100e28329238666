namespace Chandlery.Paper.Scenes;

/// <summary>Something on a page. Lengths are millimetres from the page's top left corner.</summary>
public abstract record SceneItem
{
    /// <summary>The things that it holds; empty for one that holds none.</summary>
    public virtual IReadOnlyList<SceneItem> Inside => [];

    /// <summary>Itself and all that it holds, from back to front.</summary>
    public IEnumerable<SceneItem> All => Inside.SelectMany(i => i.All).Prepend(this);

    /// <summary>The same thing elsewhere.</summary>
    /// <param name="xMm">How far to the right.</param>
    /// <param name="yMm">How far down.</param>
    public abstract SceneItem Moved(double xMm, double yMm);

    /// <summary>The same thing larger or smaller, about the page's left upper corner.</summary>
    /// <param name="by">How many times as large.</param>
    public abstract SceneItem Scaled(double by);

    /// <summary>The same thing with black and white exchanged; a picture stays as it is.</summary>
    public virtual SceneItem Reversed() => this;

    /// <summary>Has itself drawn.</summary>
    internal abstract void DrawOn(ISurface surface);
}
