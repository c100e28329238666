namespace Chandlery.Tests.Support;

/// <summary>Where the expected values of a check come from.</summary>
internal enum CheckKind
{
    /// <summary>From a document outside the project, which the check names.</summary>
    Outside,

    /// <summary>From somebody's memory of such a document; nobody has compared them yet.</summary>
    Memory,

    /// <summary>From the project itself: what must hold whatever the law says.</summary>
    Other,
}
