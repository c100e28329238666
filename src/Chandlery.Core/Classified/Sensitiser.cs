namespace Chandlery.Core.Classified;

/// <summary>A sensitiser at or over its elicitation limit.</summary>
public sealed class Sensitiser(Substance substance, SubstanceHazard hazard, Func<Working> explain)
{
    private readonly Lazy<Working> working = new(explain);

    /// <summary>Which substance.</summary>
    public Substance Substance => substance;

    /// <summary>Its hazard.</summary>
    public SubstanceHazard Hazard => hazard;

    /// <summary>How it was found.</summary>
    public Working Working => working.Value;
}
