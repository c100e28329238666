namespace Chandlery.Core.Hazards;

/// <summary>Ways that a substance may enter the body, with the units that its acute toxicity is given in.</summary>
public enum ExposureRoute
{
    /// <summary>By mouth, mg per kg body weight.</summary>
    Oral,

    /// <summary>Through the skin, mg per kg body weight.</summary>
    Dermal,

    /// <summary>Breathed as gas, ppm by volume.</summary>
    InhalationGas,

    /// <summary>Breathed as vapour, mg per litre over four hours.</summary>
    InhalationVapour,

    /// <summary>Breathed as dust or mist, mg per litre over four hours.</summary>
    InhalationDust,
}
