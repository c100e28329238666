namespace Chandlery.Core.Law;

/// <summary>Whether a rule is law.</summary>
public enum LegalStatus
{
    /// <summary>Law, in force or with a date.</summary>
    Law,

    /// <summary>Agreed but not yet law when last looked up: shown, never applied.</summary>
    Expected,
}
