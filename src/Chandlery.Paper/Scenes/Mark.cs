namespace Chandlery.Paper.Scenes;

/// <summary>Where something with a legal size lies, for proofs and checks.</summary>
/// <param name="Name">What it is, such as a pictogram's code.</param>
/// <param name="XMm">Left.</param>
/// <param name="YMm">Top.</param>
/// <param name="WidthMm">Width.</param>
/// <param name="HeightMm">Height.</param>
public sealed record Mark(string Name, double XMm, double YMm, double WidthMm, double HeightMm);
