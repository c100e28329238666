namespace Chandlery.Paper.Fonts;

/// <summary>The weights of the family that travels with the program. What the law asks for is set in Regular and Bold.</summary>
public enum Weight
{
    /// <summary>Large names in hairlines.</summary>
    Thin,

    /// <summary>Large names and figures.</summary>
    Light,

    /// <summary>Running text.</summary>
    Regular,

    /// <summary>Small type in colour or reversed.</summary>
    Medium,

    /// <summary>Names that stand on a coloured ground.</summary>
    SemiBold,

    /// <summary>Names, signal words and figures.</summary>
    Bold,
}
