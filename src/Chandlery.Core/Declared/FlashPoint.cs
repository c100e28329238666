using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>A flash point as a sheet gives it.</summary>
/// <param name="Temperature">The temperature; a lower bound when <paramref name="IsLowerBound"/>.</param>
/// <param name="IsLowerBound">True for "above 93 °C".</param>
/// <param name="Method">Such as "closed cup"; null when the sheet does not say.</param>
public sealed record FlashPoint(Celsius Temperature, bool IsLowerBound, string? Method)
{
    /// <summary>Such as "&gt; 93 °C".</summary>
    public override string ToString() => $"{(IsLowerBound ? "> " : "")}{Temperature}";
}
