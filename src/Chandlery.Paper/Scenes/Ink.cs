namespace Chandlery.Paper.Scenes;

/// <summary>Colours that documents use.</summary>
public enum Ink
{
    /// <summary>Black.</summary>
    Black,

    /// <summary>White.</summary>
    White,

    /// <summary>The red of hazard pictograms.</summary>
    Red,

    /// <summary>A grey for lines that carry no meaning.</summary>
    Grey,
}
