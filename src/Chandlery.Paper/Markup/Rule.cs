namespace Chandlery.Paper.Markup;

/// <summary>A thin line from edge to edge.</summary>
public sealed record Rule : Block;
