using Chandlery.Paper.Layout;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Blocks;

/// <summary>A part of a document, stacked from top to bottom.</summary>
public abstract record Block
{
    /// <summary>Names of the drawings that it shows; an empty name stands for none.</summary>
    internal virtual IEnumerable<string> SymbolNames => [];

    /// <summary>True for what only leads up to the block behind it, such as a heading.</summary>
    internal virtual bool LeadsUp => false;

    /// <summary>What it is for those who hear the document; null where it marks its own parts, or says nothing.</summary>
    internal virtual TagRole? Role => null;

    /// <summary>Its language; empty for the document's.</summary>
    public string Language { get; init; } = "";

    /// <summary>In how many places it takes room that a page has to spare.</summary>
    internal virtual int Stretches => 0;

    /// <summary>Lays itself out from the flow's present height on and moves the flow below itself.</summary>
    internal abstract void Lay(Flow flow);
}
