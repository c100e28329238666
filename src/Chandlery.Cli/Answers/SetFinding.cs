namespace Chandlery.Cli.Answers;

/// <summary>What the maker of a gift set must know, for programs.</summary>
/// <param name="StopsSale">Whether it stops the sale.</param>
/// <param name="What">What was found.</param>
/// <param name="Clause">Where the rule stands; empty when it is no rule of law.</param>
internal sealed record SetFinding(bool StopsSale, string What, string Clause);
