namespace Chandlery.Core.Declared;

/// <summary>A second pour: a <see cref="ScentedTopUp"/> or a <see cref="PlainTopUp"/>.</summary>
public abstract record TopUp
{
    private protected TopUp() { }
}
