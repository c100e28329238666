namespace Chandlery.Core.Declared;

/// <summary>What packaging is made of, as registers count it.</summary>
public enum PackagingMaterial
{
    /// <summary>Paper and board.</summary>
    Paper,

    /// <summary>Glass.</summary>
    Glass,

    /// <summary>Steel and tinplate.</summary>
    Steel,

    /// <summary>Aluminium.</summary>
    Aluminium,

    /// <summary>Plastic.</summary>
    Plastic,

    /// <summary>Wood and cork.</summary>
    Wood,

    /// <summary>Layers of several materials that do not come apart.</summary>
    Composite,

    /// <summary>Ceramics, textiles and the rest.</summary>
    Other,
}
