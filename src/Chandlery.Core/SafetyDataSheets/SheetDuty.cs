namespace Chandlery.Core.SafetyDataSheets;

/// <summary>When a safety data sheet is due.</summary>
public enum SheetDuty
{
    /// <summary>With the first delivery to a business.</summary>
    WithDelivery,

    /// <summary>When a business asks for it.</summary>
    OnRequest,

    /// <summary>Not at all.</summary>
    NotDue,
}
