namespace Chandlery.Core.Declared;

/// <summary>What came to the maker's knowledge.</summary>
public enum IncidentKind
{
    /// <summary>Somebody is not content, and nothing happened that could have hurt.</summary>
    Complaint,

    /// <summary>Something happened that hurt or damaged, or could have.</summary>
    Accident,

    /// <summary>An authority asks or orders.</summary>
    Authority,
}
