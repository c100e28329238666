namespace Chandlery.Paper.Scenes;

/// <summary>Things that mean something together, for those who hear a document instead of seeing it.</summary>
/// <param name="Role">What they are.</param>
/// <param name="Items">The things.</param>
public sealed record TaggedItem(TagRole Role, IReadOnlyList<SceneItem> Items) : SceneItem
{
    /// <summary>Language code where it is not the document's; null otherwise.</summary>
    public string? Language { get; init; }

    /// <summary>What a picture shows, in words; null where its text says it.</summary>
    public string? Alternative { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<SceneItem> Inside => Items;

    /// <inheritdoc/>
    public override SceneItem Moved(double xMm, double yMm) => this with { Items = [.. Items.Select(i => i.Moved(xMm, yMm))] };

    /// <inheritdoc/>
    public override SceneItem Scaled(double by) => this with { Items = [.. Items.Select(i => i.Scaled(by))] };

    /// <inheritdoc/>
    public override SceneItem Reversed() => this with { Items = [.. Items.Select(i => i.Reversed())] };

    /// <inheritdoc/>
    internal override void DrawOn(ISurface surface) => surface.Draw(this);
}
