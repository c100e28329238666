namespace Chandlery.Tests.Law.Cases;

/// <summary>How a case's list is compared with the answer's; the order never matters.</summary>
internal enum ExpectationMatch
{
    /// <summary>These and no others.</summary>
    Exact,

    /// <summary>At least these.</summary>
    Include,

    /// <summary>None of these.</summary>
    Exclude,

    /// <summary>None but these, though not all of them need be there.</summary>
    Only,
}
