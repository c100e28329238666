using Chandlery.Paper.Layout;

namespace Chandlery.Paper.Blocks;

/// <summary>A part of a document, stacked from top to bottom.</summary>
public abstract record Block
{
    /// <summary>Names of the drawings that it shows; an empty name stands for none.</summary>
    internal virtual IEnumerable<string> SymbolNames => [];

    /// <summary>Lays itself out from the flow's present height on and moves the flow below itself.</summary>
    internal abstract void Lay(Flow flow);
}
