namespace Chandlery.Core.Hazards;

/// <summary>The three parts of the hazard classes.</summary>
public enum HazardArea
{
    /// <summary>Physical hazards.</summary>
    Physical,

    /// <summary>Hazards to health.</summary>
    Health,

    /// <summary>Hazards to the environment.</summary>
    Environment,
}
