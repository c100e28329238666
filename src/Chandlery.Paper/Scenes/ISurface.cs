namespace Chandlery.Paper.Scenes;

/// <summary>Something that scenes are drawn on; a new kind of item does not compile until every surface can draw it.</summary>
internal interface ISurface
{
    /// <summary>Draws a line of text.</summary>
    void Draw(TextItem text);

    /// <summary>Draws a path.</summary>
    void Draw(PathItem path);

    /// <summary>Draws what lies inside a path.</summary>
    void Draw(ClipItem clip);

    /// <summary>Draws a picture.</summary>
    void Draw(PictureItem picture);

    /// <summary>Draws things that mean something together.</summary>
    void Draw(TaggedItem tagged);
}
