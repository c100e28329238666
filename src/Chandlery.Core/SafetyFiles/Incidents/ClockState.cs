namespace Chandlery.Core.SafetyFiles.Incidents;

/// <summary>How a report stands.</summary>
public enum ClockState
{
    /// <summary>Made in time.</summary>
    Done,

    /// <summary>Made after its last day.</summary>
    DoneLate,

    /// <summary>Not made, and its last day is not over.</summary>
    Open,

    /// <summary>Not made, and its last day is over.</summary>
    Overdue,

    /// <summary>No report is called for.</summary>
    NotDue,

    /// <summary>No rule is known for the place: a person must look it up.</summary>
    Unknown,
}
