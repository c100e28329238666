namespace Chandlery.Paper.Fonts;

/// <summary>The two weights that documents are set in.</summary>
public enum Weight
{
    /// <summary>Running text.</summary>
    Regular,

    /// <summary>Names, signal words and figures.</summary>
    Bold,
}
