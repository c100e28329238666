namespace Chandlery.Paper.Scenes;

/// <summary>Where something with a legal size lies, for proofs and checks.</summary>
/// <param name="Name">What it is, such as a pictogram's code.</param>
/// <param name="XMm">Left.</param>
/// <param name="YMm">Top.</param>
/// <param name="WidthMm">Width.</param>
/// <param name="HeightMm">Height.</param>
public sealed record Mark(string Name, double XMm, double YMm, double WidthMm, double HeightMm)
{
    /// <summary>The same thing elsewhere.</summary>
    /// <param name="xMm">How far to the right.</param>
    /// <param name="yMm">How far down.</param>
    public Mark Moved(double xMm, double yMm) => this with { XMm = XMm + xMm, YMm = YMm + yMm };
}
