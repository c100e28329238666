namespace Chandlery.Core.Declared;

/// <summary>How much of an oil goes into a blend.</summary>
public enum OilMeasure
{
    /// <summary>Percent by mass of the oil blend.</summary>
    Share,

    /// <summary>Grams.</summary>
    Grams,

    /// <summary>Millilitres, turned into grams by the oil's density.</summary>
    Millilitres,

    /// <summary>Drops, turned into grams by the oil's drop mass.</summary>
    Drops,
}
