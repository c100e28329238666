namespace Chandlery.Core.Making;

/// <summary>How the spacing of wicks stands to what the wick maker or common practice asks.</summary>
public enum WickVerdict
{
    /// <summary>The vessel's inside is not declared.</summary>
    NotKnown,

    /// <summary>There is one wick, or the distance lies within the range.</summary>
    Fits,

    /// <summary>They stand closer: there are too many.</summary>
    TooMany,

    /// <summary>They stand farther apart: there may be too few, which is never a reason for more fire by itself.</summary>
    FarApart,
}
