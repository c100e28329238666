namespace Chandlery.Tests.SecondCalculation;

/// <summary>A substance in the making.</summary>
internal sealed class SubstanceDraft
{
    public List<string> Classes { get; } = [];

    public List<GivenLimit> Limits { get; } = [];

    public List<GivenEstimate> Estimates { get; } = [];

    /// <summary>Shares at which something may change.</summary>
    public List<double> Turns { get; } = [];

    public double? AcuteM { get; set; }

    public double? ChronicM { get; set; }

    public bool Unknown { get; set; }

    public double Percent { get; set; }

    /// <summary>The finished substance.</summary>
    public GivenSubstance Finish(string name) => new(name, Percent, Unknown ? null : Classes, Limits, AcuteM, ChronicM, Estimates);
}
