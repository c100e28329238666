namespace Chandlery.Paper.Scenes;

/// <summary>Something that scenes are drawn on; a new kind of item does not compile until every surface can draw it.</summary>
internal interface ISurface
{
    /// <summary>Draws a line of text.</summary>
    void Draw(TextItem text);

    /// <summary>Draws a path.</summary>
    void Draw(PathItem path);
}
