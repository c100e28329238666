namespace Chandlery.Core.Law;

/// <summary>A part of the safety data sheet that is computed: tables, lists, pictograms.</summary>
public enum SheetPart
{
    /// <summary>The candle's classes with their statements.</summary>
    Classes,

    /// <summary>The label's elements.</summary>
    LabelElements,

    /// <summary>The law's statement on ingredients of unknown acute toxicity.</summary>
    UnknownToxicity,

    /// <summary>The statement on ingredients of unknown hazard to waters.</summary>
    UnknownAquatic,

    /// <summary>The substances of section 3.</summary>
    Composition,

    /// <summary>Classes for health that are met, with how.</summary>
    HealthResults,

    /// <summary>Classes for health that are not met, with their clauses.</summary>
    HealthNotMet,

    /// <summary>Classes for health that are not computed, with the reason.</summary>
    HealthNotComputed,

    /// <summary>Acute toxicity estimates of ingredients.</summary>
    Estimates,

    /// <summary>Classes for the environment that are met, with how.</summary>
    EnvironmentResults,

    /// <summary>Classes for the environment that are not met, with their clauses.</summary>
    EnvironmentNotMet,

    /// <summary>What the law was taken from.</summary>
    LawSources,

    /// <summary>What the law's edition leaves to others.</summary>
    NotCovered,

    /// <summary>Full text of hazard statements.</summary>
    Statements,

    /// <summary>How each class was found.</summary>
    Methods,

    /// <summary>The suppliers' documents.</summary>
    Documents,

    /// <summary>What could not be assessed.</summary>
    Unassessed,

    /// <summary>What abbreviations mean.</summary>
    Abbreviations,
}
