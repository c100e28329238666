namespace Chandlery.Core.Law;

/// <summary>One line of a working: what a substance adds.</summary>
/// <param name="Substance">Name.</param>
/// <param name="Cas">CAS number, or null.</param>
/// <param name="Hazard">The hazard that counts.</param>
/// <param name="Percent">Share in the finished candle, percent, high end.</param>
/// <param name="Factor">Weight times M-factor.</param>
/// <param name="Limit">The limit that this substance is measured by, percent; for acute toxicity its estimate.</param>
/// <param name="Adds">What it adds to the sum, in the unit of the threshold.</param>
/// <param name="Source">Whose word the hazard is.</param>
public sealed record WorkingLine(
    string Substance,
    string? Cas,
    string Hazard,
    double Percent,
    double Factor,
    double Limit,
    double Adds,
    string Source
);

/// <summary>How a result was found.</summary>
/// <param name="Formula">What was computed, in words and signs.</param>
/// <param name="Lines">The inputs.</param>
/// <param name="Value">What came out.</param>
/// <param name="Threshold">What it was compared with.</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="Clause">Where the rule stands.</param>
/// <param name="Sentence">The same for a reader who is no chemist.</param>
/// <param name="Confidence">How the rule's row was checked.</param>
public sealed record Working(
    string Formula,
    IReadOnlyList<WorkingLine> Lines,
    double Value,
    double Threshold,
    string Unit,
    string Clause,
    string Sentence,
    string Confidence
);

/// <summary>Why a candle has a class.</summary>
/// <param name="Statement">Hazard statement, with the letters that say more where all causes agree.</param>
/// <param name="Working">How the class was found.</param>
/// <param name="Causes">The substances behind it.</param>
public sealed record Explanation(string Statement, Working Working, IReadOnlyList<Substance> Causes);

/// <summary>A class that the candle has. Its explanation is worked out when somebody asks, since most of a catalogue is never asked about.</summary>
public sealed class ClassResult(HazardCategory category, ClassRule rule, Func<Explanation> explain)
{
    private readonly Lazy<Explanation> explanation = new(explain);

    /// <summary>Class and category.</summary>
    public HazardCategory Category => category;

    /// <summary>The rule that gave it.</summary>
    public ClassRule Rule => rule;

    /// <summary>Hazard statement, with the letters that say more where all causes agree.</summary>
    public string Statement => explanation.Value.Statement;

    /// <summary>How it was found.</summary>
    public Working Working => explanation.Value.Working;

    /// <summary>The substances behind it.</summary>
    public IReadOnlyList<Substance> Causes => explanation.Value.Causes;
}

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

/// <summary>The classification of a candle.</summary>
/// <param name="Classes">Classes, in the order of the rules.</param>
/// <param name="Sensitisers">Sensitisers at or over their elicitation limits.</param>
/// <param name="Supplemental">The supplemental statement that names them when the candle is not classified for it; null when none is called for.</param>
/// <param name="UnknownToxicity">The statement on ingredients of unknown acute toxicity; null when none is called for.</param>
public sealed record Classification(
    IReadOnlyList<ClassResult> Classes,
    IReadOnlyList<Sensitiser> Sensitisers,
    string? Supplemental,
    UnknownStatement? UnknownToxicity
);

/// <summary>The share of ingredients of unknown acute toxicity that the label states.</summary>
/// <param name="Share">Percent of the candle.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record UnknownStatement(Quantities.MassPercent Share, string Clause);
