namespace Chandlery.Core.Assessed;

/// <summary>How grave a finding is.</summary>
public enum Gravity
{
    /// <summary>The candle must not be sold like this.</summary>
    Stop,

    /// <summary>Something that a person must look at.</summary>
    Look,
}
