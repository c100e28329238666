namespace Chandlery.Core.Law.AnnexVi;

/// <summary>The lines of the table, found by number.</summary>
internal abstract class AnnexLines
{
    /// <summary>Lines among which those of a CAS or EC number are; all lines of one index number stand together.</summary>
    /// <param name="number">The number with its hyphens.</param>
    public abstract IEnumerable<string> Near(string number);

    /// <summary>All lines, in the order of the index numbers.</summary>
    public abstract IEnumerable<string> All();
}
