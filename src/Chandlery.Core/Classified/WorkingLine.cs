namespace Chandlery.Core.Classified;

/// <summary>One line of a working: what a substance adds.</summary>
public sealed record WorkingLine
{
    /// <summary>Name.</summary>
    public required string Substance { get; init; }

    /// <summary>CAS number, or null.</summary>
    public required string? Cas { get; init; }

    /// <summary>The hazard that counts.</summary>
    public required string Hazard { get; init; }

    /// <summary>Share in the finished candle, percent, high end.</summary>
    public required double Percent { get; init; }

    /// <summary>Weight times M-factor.</summary>
    public required double Factor { get; init; }

    /// <summary>The limit that this substance is measured by, percent; for acute toxicity its estimate.</summary>
    public required double Limit { get; init; }

    /// <summary>What it adds to the sum, in the unit of the threshold.</summary>
    public required double Adds { get; init; }

    /// <summary>Whose word the hazard is.</summary>
    public required string Source { get; init; }
}
