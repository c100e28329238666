namespace Chandlery.Core.Law;

/// <summary>Which of a candle's parts a generic identifier may stand for.</summary>
public enum GenericSource
{
    /// <summary>What comes from fragrance oils alone.</summary>
    Oils,

    /// <summary>What comes from dyes alone.</summary>
    Dyes,
}
