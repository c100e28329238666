namespace Chandlery.Paper.Blocks;

/// <summary>How lines stand between the edges.</summary>
public enum Align
{
    /// <summary>At the left edge.</summary>
    Left,

    /// <summary>In the middle.</summary>
    Centre,

    /// <summary>At the right edge.</summary>
    Right,
}
