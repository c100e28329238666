namespace Chandlery.Intake.Drafts;

/// <summary>What kind of document a PDF is.</summary>
public enum SheetKind
{
    /// <summary>Safety data sheet.</summary>
    SafetyDataSheet,

    /// <summary>IFRA certificate of conformity.</summary>
    IfraCertificate,

    /// <summary>Statement of fragrance allergens.</summary>
    AllergenStatement,
}
