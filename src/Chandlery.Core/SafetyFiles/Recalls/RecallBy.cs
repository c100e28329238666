namespace Chandlery.Core.SafetyFiles.Recalls;

/// <summary>What a recall begins with.</summary>
public enum RecallBy
{
    /// <summary>A batch.</summary>
    Batch,

    /// <summary>A lot that was bought.</summary>
    Lot,

    /// <summary>An oil.</summary>
    Oil,

    /// <summary>A substance.</summary>
    Substance,
}
