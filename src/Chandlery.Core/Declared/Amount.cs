namespace Chandlery.Core.Declared;

/// <summary>How much of something: a <see cref="RelativeAmount"/> or a <see cref="WeighedAmount"/>.</summary>
public abstract record Amount
{
    private protected Amount() { }
}
