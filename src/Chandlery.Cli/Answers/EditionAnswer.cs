namespace Chandlery.Cli.Answers;

/// <summary>An edition of the law, for programs.</summary>
/// <param name="Edition">Its short name.</param>
/// <param name="Name">Its name.</param>
/// <param name="LookedUp">The day its sources were looked up.</param>
/// <param name="Sources">Where it comes from.</param>
/// <param name="Covers">What it covers.</param>
/// <param name="LeavesToOthers">What it leaves to others.</param>
/// <param name="Changes">What changes, and from when.</param>
internal sealed record EditionAnswer(
    string Edition,
    string Name,
    string LookedUp,
    IReadOnlyList<string> Sources,
    IReadOnlyList<string> Covers,
    IReadOnlyList<string> LeavesToOthers,
    IReadOnlyList<string> Changes
);
