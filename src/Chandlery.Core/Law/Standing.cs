namespace Chandlery.Core.Law;

/// <summary>How well a row of data is founded.</summary>
public enum Standing
{
    /// <summary>The row, or the file for all its rows, says how it was checked.</summary>
    Checked,

    /// <summary>It says that all or a part of it is from memory.</summary>
    FromMemory,

    /// <summary>It says nothing.</summary>
    NotSaid,
}
