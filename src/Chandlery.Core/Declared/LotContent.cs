namespace Chandlery.Core.Declared;

/// <summary>What kind of thing a lot holds.</summary>
public enum LotContent
{
    /// <summary>An oil.</summary>
    Oil,

    /// <summary>A wax.</summary>
    Wax,

    /// <summary>A dye or other extra.</summary>
    Extra,

    /// <summary>Vessels.</summary>
    Vessel,

    /// <summary>Wicks, by their kind.</summary>
    Wick,

    /// <summary>Boxes, tags and the like, by what the candles call them.</summary>
    Packaging,
}
