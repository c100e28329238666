namespace Chandlery.Paper.Markup;

/// <summary>A part of a document, stacked from top to bottom.</summary>
public abstract record Block;
