namespace Chandlery.Paper.Markup;

/// <summary>Empty room.</summary>
/// <param name="Size">Height as a multiple of the base type size.</param>
public sealed record Gap(double Size) : Block;
