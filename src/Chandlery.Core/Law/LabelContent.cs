namespace Chandlery.Core.Law;

/// <summary>What a label is there to show.</summary>
public enum LabelContent
{
    /// <summary>Hazards: pictograms, signal word, statements.</summary>
    Hazards,

    /// <summary>Fire-safety warnings in words; the classification is for the workplace only.</summary>
    FireSafety,

    /// <summary>Signs of burn safety only: no hazards, and no warning whose words a law or standard fixes.</summary>
    BurnSafety,
}
