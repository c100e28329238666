namespace Chandlery.Paper.Designs;

/// <summary>What a design is drawn on.</summary>
public enum DesignPiece
{
    /// <summary>The front of a label, upright or square.</summary>
    Front,

    /// <summary>A round lid.</summary>
    Lid,

    /// <summary>The base of a vessel, round.</summary>
    Base,

    /// <summary>A tag that hangs from the vessel, with a hole.</summary>
    Tag,

    /// <summary>A strip over lid and side.</summary>
    Strip,

    /// <summary>A small label for a sampler.</summary>
    Sampler,
}
