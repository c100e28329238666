namespace Chandlery.Cli.Answers;

/// <summary>A kind of product, for programs.</summary>
/// <param name="Kind">Its name in declarations.</param>
/// <param name="Name">What it is called.</param>
/// <param name="State">solid or liquid.</param>
/// <param name="UsedIn">indoor, outdoor or both.</param>
/// <param name="IfraCategory">The category asked of certificates; null when the certificate says it.</param>
/// <param name="Needs">Parts that it needs.</param>
/// <param name="MayHave">Parts that it may have.</param>
internal sealed record KindAnswer(
    string Kind,
    string Name,
    string State,
    IReadOnlyList<string> UsedIn,
    string? IfraCategory,
    IReadOnlyList<string> Needs,
    IReadOnlyList<string> MayHave
)
{
    /// <summary>Papers that are not made of it.</summary>
    public required IReadOnlyList<string> WithoutPapers { get; init; }

    /// <summary>Where its signs and messages come from.</summary>
    public required string Source { get; init; }
}
