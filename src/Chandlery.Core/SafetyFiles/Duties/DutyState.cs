namespace Chandlery.Core.SafetyFiles.Duties;

/// <summary>How a duty stands.</summary>
public enum DutyState
{
    /// <summary>Done, as far as the declarations show.</summary>
    Done,

    /// <summary>Not done.</summary>
    Open,

    /// <summary>Not due yet.</summary>
    Later,

    /// <summary>Not due for this candle.</summary>
    NotDue,

    /// <summary>Nothing that the program holds shows it: a person must say.</summary>
    ByHand,
}
