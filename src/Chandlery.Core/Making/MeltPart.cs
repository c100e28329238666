namespace Chandlery.Core.Making;

/// <summary>A part of a melt.</summary>
/// <param name="Key">What it is, by kind and file name.</param>
/// <param name="Name">Its name.</param>
/// <param name="Kind">What it is, in a word.</param>
/// <param name="Fraction">How much of the melt it is, 0 to 1.</param>
internal sealed record MeltPart(string Key, string Name, string Kind, double Fraction);
