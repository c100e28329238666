namespace Chandlery.Tests.SecondCalculation;

/// <summary>What an acute toxicity estimate is about: a route, and for what is breathed also its form.</summary>
internal enum GivenForm
{
    /// <summary>Swallowed, mg per kg body weight.</summary>
    Oral,

    /// <summary>On the skin, mg per kg body weight.</summary>
    Dermal,

    /// <summary>Breathed as a gas, ppm by volume.</summary>
    Gas,

    /// <summary>Breathed as a vapour, mg per litre.</summary>
    Vapour,

    /// <summary>Breathed as dust or mist, mg per litre.</summary>
    Dust,
}
