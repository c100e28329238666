namespace Chandlery.Core.Law;

/// <summary>The words that computed parts of the safety data sheet are put together with.</summary>
public enum SheetPhrase
{
    /// <summary>A substance without a class.</summary>
    NoClass,

    /// <summary>A substance of whose hazards nothing is known.</summary>
    Unknown,

    /// <summary>A share of which only the high end is known.</summary>
    ShareUpTo,

    /// <summary>A share with both ends.</summary>
    ShareRange,

    /// <summary>A substance with its share, in a sentence.</summary>
    SubstanceUpTo,

    /// <summary>A specific concentration limit.</summary>
    OwnLimit,

    /// <summary>An M-factor for acute toxicity to water life.</summary>
    AcuteM,

    /// <summary>An M-factor for chronic toxicity to water life.</summary>
    ChronicM,

    /// <summary>Follows an M-factor that nobody gives.</summary>
    MAssumed,

    /// <summary>Acute toxicity estimate, oral.</summary>
    AteOral,

    /// <summary>Acute toxicity estimate, dermal.</summary>
    AteDermal,

    /// <summary>Acute toxicity estimate, vapours.</summary>
    AteVapour,

    /// <summary>Acute toxicity estimate, dust or mist.</summary>
    AteDust,

    /// <summary>Acute toxicity estimate, gas.</summary>
    AteGas,

    /// <summary>An oil without a declared flash point.</summary>
    FlashPointNotDeclared,

    /// <summary>How a class was computed.</summary>
    CalculationMethod,

    /// <summary>What the law's edition leaves to others.</summary>
    NotAssessedHere,

    /// <summary>A supplier's document.</summary>
    Document,

    /// <summary>A statement that the language lacks.</summary>
    MissingStatement,

    /// <summary>All free text is English.</summary>
    FreeTextIsEnglish,

    /// <summary>Some free text is English.</summary>
    SomeTextIsEnglish,
}
