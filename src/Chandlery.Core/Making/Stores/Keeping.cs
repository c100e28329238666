namespace Chandlery.Core.Making.Stores;

/// <summary>How a lot stands to its best-before day.</summary>
public enum Keeping
{
    /// <summary>No day is declared: nobody can say.</summary>
    NotKnown,

    /// <summary>The day is far.</summary>
    Good,

    /// <summary>The day is near.</summary>
    Soon,

    /// <summary>The day has passed.</summary>
    Past,
}
